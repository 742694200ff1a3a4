// SPDX-License-Identifier: MIT
// Words of a line, for those who look for some of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scruple::printed {

[[nodiscard]] std::string lower(std::string_view text);

/// ASCII letters, and every byte of another character.
[[nodiscard]] bool is_letter(char c);

/// Whether it stands there with no letter on either side.
[[nodiscard]] bool has_word(std::string_view text, std::string_view word);

/// In lower case, without the points, commas, dashes and parentheses around them.
[[nodiscard]] std::vector<std::string> words_of(std::string_view text);

/// Runs of blanks become one; blanks, points, commas, colons and dashes at the ends go.
[[nodiscard]] std::string tidied(std::string_view text);

/// In so many significant figures.
[[nodiscard]] std::string figures(double value, int digits = 4);

}  // namespace scruple::printed
