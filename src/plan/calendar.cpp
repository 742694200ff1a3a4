// SPDX-License-Identifier: MIT
#include "scruple/plan/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace scruple::plan {

namespace {

using check::Day;
using check::Exact;
using std::chrono::sys_days;
using std::chrono::year_month_day;

year_month_day date_of(Day day) {
    return year_month_day(sys_days(std::chrono::days(day)));
}

Exact seconds_in(quantity::Unit unit) {
    return quantity::info(unit).factor;
}

/// Never more than leads past the last of all days from any of them.
Day whole(const Exact& value, Day most) {
    return static_cast<Day>(std::min(value.floor().to_double(), static_cast<double>(most)));
}

bool by_the_calendar(std::string_view text) {
    return text.find("month") != std::string_view::npos || text.find("year") != std::string_view::npos;
}

}  // namespace

std::string day_text(Day day) {
    const year_month_day date = date_of(day);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                       static_cast<unsigned>(date.day()));
}

Day add_months(Day day, int months) {
    year_month_day date = date_of(day) + std::chrono::months(months);
    if (!date.ok()) date = date.year() / date.month() / std::chrono::last;
    return static_cast<Day>(sys_days(date).time_since_epoch().count());
}

Day last_day(Day from, const Exact& seconds, std::string_view text) {
    const Exact a_day = seconds_in(quantity::Unit::day);
    constexpr Day most_days = 4'000'000, most_months = 120'000;
    if (!by_the_calendar(text)) return std::min(from + whole(seconds / a_day, most_days), last_of_days);
    const Exact a_month = seconds_in(quantity::Unit::month);
    const Day months = whole(seconds / a_month, most_months);
    const Day rest = whole((seconds - months * a_month) / a_day, most_days);
    return std::min(add_months(from, months) + rest, last_of_days);
}

}  // namespace scruple::plan
