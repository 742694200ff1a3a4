// SPDX-License-Identifier: MIT
// What the lines of the log leave on hand.
#pragma once

#include <string>
#include <vector>

#include "lots.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// Every line up to a day and with it.
[[nodiscard]] Lots lots_on(const check::Model& model, check::Day day);

/// The sums of that alone. A line that takes more than there is leaves nothing, and a warning.
[[nodiscard]] Stock stock_on(const check::Model& model, check::Day day, std::vector<std::string>& warnings);

/// `2026-11-05 mixed Heron part A 500 ml`
[[nodiscard]] std::string line_words(const check::Model& model, const check::LogEntry& line);
/// `the log's line … takes 5 g more metol than there was`
[[nodiscard]] std::string shortage_words(const check::Model& model, const Shortage& shortage);

/// g or ml, to four figures.
[[nodiscard]] Figure stocked_figure(const Stocked& what, const check::Exact& measure);

}  // namespace scruple::plan
