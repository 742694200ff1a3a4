// SPDX-License-Identifier: MIT
// Amounts and names as people type them, brought to the order of recipe text.
#pragma once

#include <string>
#include <vector>

namespace scruple::cli {

/// At blanks, however many.
[[nodiscard]] std::vector<std::string> words_of(const std::string& typed);

/// `30 g metol` as `metol 30 g`: with the amount at the end, as far as that makes a clear line of it.
/// Where nothing does, the first two words are taken for it, and the checker explains what they lack.
[[nodiscard]] std::string as_recipe_line(const std::string& typed);

}  // namespace scruple::cli
