// SPDX-License-Identifier: MIT
// What the text, the page and the sheet of an evening all say.
#pragma once

#include <string>
#include <vector>

#include "scruple/plan/evening.hpp"

namespace scruple::emit::words {

inline constexpr std::string_view vessels_heading = "In which vessel";
inline constexpr std::string_view clock_heading = "By the clock";
inline constexpr std::string_view chart_heading = "At a glance";
inline constexpr std::string_view chart_key = "black: hands are at it; striped: it goes on by itself; a line: it waits";

/// `Mixing for December on Tuesday 2026-12-01`
[[nodiscard]] std::string evening_title(const plan::Evening& evening);
/// How long it takes, how much of that by hand, and how long one after the other would take.
[[nodiscard]] std::vector<std::string> evening_sums(const plan::Evening& evening);
/// `18:05`; without a time to begin, minutes from the start as `0:05`.
[[nodiscard]] std::string clock(const plan::Evening& evening, plan::Minutes at);
/// `18:05 to 18:40, then into 2 × 500 ml`
[[nodiscard]] std::string in_vessel(const plan::Evening& evening, const plan::EveningSolution& solution);
/// `1 l Lantern part A`
[[nodiscard]] std::string solution_head(const plan::EveningSolution& solution);
/// `4.2 g metol`, with the number that the line has on its card
[[nodiscard]] std::string step_words(const plan::Work& work);
/// How warm, where else, how; then what goes on by itself.
[[nodiscard]] std::vector<std::string> step_remarks(const plan::Evening& evening, const plan::EveningStep& step);

/// Steps that follow each other in one solution, under one head.
struct Turn {
    std::size_t solution = 0;
    std::vector<const plan::EveningStep*> steps;
};
[[nodiscard]] std::vector<Turn> turns_of(const plan::Evening& evening);

}  // namespace scruple::emit::words
