// SPDX-License-Identifier: MIT
// What the text, the page and the events of a mixing calendar all say.
#pragma once

#include <string>
#include <vector>

#include "scruple/plan/mixing_calendar.hpp"

namespace scruple::emit::words {

/// `Mixing for December`
[[nodiscard]] std::string calendar_title(const plan::MixingCalendar& calendar);
/// `3 days of weighing, 7 solutions mixed on them`
[[nodiscard]] std::string calendar_sum(const plan::MixingCalendar& calendar);
/// `Tuesday 2026-12-01`
[[nodiscard]] std::string weekday(check::Day day);
/// `into 1 × 1 l and 2 × 250 ml`; empty where it is used on the day.
[[nodiscard]] std::string into_bottles(const plan::Mixing& mixing);
/// `for 2026-12-01 and 3 more days up to 2026-12-22`
[[nodiscard]] std::string used_on(const plan::Mixing& mixing, check::Day mixed);
/// `use by 2027-01-12 (6 weeks half full)`
[[nodiscard]] std::string use_by(const plan::Mixing& mixing);

/// All three but for those that say nothing, why it is more than its uses take, and the days on which times grow.
[[nodiscard]] std::vector<std::string> mixing_lines(const plan::Mixing& mixing, check::Day mixed);

}  // namespace scruple::emit::words
