// SPDX-License-Identifier: MIT
// Fact and step words, and a sample of the line that each begins.
#pragma once

#include <string>
#include <string_view>

namespace scruple::check {

/// How a line that begins with this word, or with a date, is said: recipe text in backticks.
[[nodiscard]] std::string_view how_to_say(std::string_view keyword);

/// The fact or step word that a line begins with, and how such a line is said; empty where it begins otherwise.
struct Saying {
    std::string_view keyword;
    std::string_view how;
};
[[nodiscard]] Saying saying_at(std::string_view line);

/// The same for a `dilute` line that cannot be read, with the numbers that stand in it.
[[nodiscard]] std::string how_to_dilute(std::string_view line);

}  // namespace scruple::check
