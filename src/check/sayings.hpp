// SPDX-License-Identifier: MIT
// Fact and step words, and a sample of the line that each begins.
#pragma once

#include <string>
#include <string_view>

namespace scruple::check {

/// How a line that begins with this word, or with a date, is said: recipe text in backticks.
[[nodiscard]] std::string_view how_to_say(std::string_view keyword);

/// The same for a `dilute` line that cannot be read, with the numbers that stand in it.
[[nodiscard]] std::string how_to_dilute(std::string_view line);

}  // namespace scruple::check
