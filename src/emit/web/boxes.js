// SPDX-License-Identifier: MIT
// Elements that the scripts make, and the printed boxes as ones that can be ticked.

function made(name, text, attributes = {}) {
  const element = document.createElement(name);
  element.textContent = text;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

function tickable(name, ticked = false) {
  const label = made("label", "", { class: "tick" });
  const box = made("input", "", { type: "checkbox", class: "box", autocomplete: "off" });
  box.checked = ticked;
  label.append(box, name);
  return label;
}

for (const box of document.querySelectorAll("article .tick > .box")) {
  const name = box.parentElement.textContent;
  const step = box.closest(".work > li")?.querySelector(".number").textContent;
  const label = tickable(name);
  if (step) label.firstChild.setAttribute("aria-label", `step ${step}: ${name}`);
  box.parentElement.replaceWith(label);
}
