// SPDX-License-Identifier: MIT
// The search on the page of all cards: hides the lines that do not hold every word that is typed.
#pragma once

#include <string_view>

namespace scruple::emit {

inline constexpr std::string_view search_script = R"(
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
)";

/// The digest of `search_script`, for the page's policy.
inline constexpr std::string_view search_script_digest = "sha256-UcPrznikdaJkD5l5J+mGPKTEbkZwEZa7574RH1CB1kk=";

}  // namespace scruple::emit
