// SPDX-License-Identifier: MIT
// The search on the page of all cards: hides the lines that do not hold every word that is typed.
"use strict";
const wanted = document.getElementById("wanted");
const lines = Array.from(document.querySelectorAll(".binder > li"));
const texts = lines.map((line) => line.textContent.toLowerCase());
function search() {
  const all = wanted.value.toLowerCase().split(/\s+/).filter(Boolean);
  let count = 0;
  lines.forEach((line, i) => {
    line.hidden = !all.every((word) => texts[i].includes(word));
    if (!line.hidden) count += 1;
  });
  document.getElementById("found").textContent =
    all.length === 0 ? "" : count === 1 ? "1 card has it" : count + " cards have it";
}
wanted.addEventListener("input", search);
document.getElementById("search").hidden = false;
search();
