// SPDX-License-Identifier: MIT
// Days of the calendar: how a day is written, and when a keeping time that starts on it ends.
#pragma once

#include <string>
#include <string_view>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// 9999-12-31: a later one has no four digits for its year.
inline constexpr check::Day last_of_days = 2'932'896;

/// 2026-12-03
[[nodiscard]] std::string day_text(check::Day day);

/// The same day of the month so many months later; where that month is shorter, its last day.
[[nodiscard]] check::Day add_months(check::Day day, int months);

/// The last day of a keeping time of `seconds`, written as `text`, that starts on `from`. Months and
/// years of the text are counted by the calendar, other units as durations; a part of a day is dropped. The last of all
/// days at most.
[[nodiscard]] check::Day last_day(check::Day from, const check::Exact& seconds, std::string_view text);

}  // namespace scruple::plan
