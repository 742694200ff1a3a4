// SPDX-License-Identifier: MIT
#include "scruple/plan/calendar.hpp"

#include <doctest/doctest.h>

using namespace scruple;
using check::Exact;
using plan::add_months;
using plan::day_text;
using plan::last_day;

namespace {

// Days since 1970-01-01 as `date -u -d DAY +%s` of GNU coreutils gives them, over 86400.
constexpr check::Day leap_day_2000 = 11016;
constexpr check::Day jan_31_2027 = 20849;
constexpr check::Day nov_2_2026 = 20759;

Exact days(int count) {
    return Exact(86400) * count;
}
Exact months(int count) {
    return quantity::info(quantity::Unit::month).factor * count;
}
Exact years(int count) {
    return quantity::info(quantity::Unit::year).factor * count;
}

}  // namespace

TEST_CASE("days are written as years, months and days") {
    CHECK(day_text(0) == "1970-01-01");
    CHECK(day_text(-1) == "1969-12-31");
    CHECK(day_text(leap_day_2000) == "2000-02-29");
    CHECK(day_text(jan_31_2027) == "2027-01-31");
    CHECK(day_text(nov_2_2026) == "2026-11-02");
}

TEST_CASE("months end where the month ends") {
    CHECK(day_text(add_months(jan_31_2027, 1)) == "2027-02-28");
    CHECK(day_text(add_months(jan_31_2027, 13)) == "2028-02-29");
    CHECK(day_text(add_months(jan_31_2027, 2)) == "2027-03-31");
    CHECK(day_text(add_months(leap_day_2000, 12)) == "2001-02-28");
}

TEST_CASE("keeping times: months and years by the calendar, the rest as they are") {
    CHECK(day_text(last_day(nov_2_2026, months(6), "6 months")) == "2027-05-02");
    CHECK(day_text(last_day(nov_2_2026, years(1), "1 year")) == "2027-11-02");
    CHECK(day_text(last_day(nov_2_2026, days(14), "2 weeks")) == "2026-11-16");
    CHECK(day_text(last_day(nov_2_2026, days(30), "30 days")) == "2026-12-02");
    CHECK(day_text(last_day(nov_2_2026, Exact(7200), "2 h")) == "2026-11-02");
    CHECK(day_text(last_day(nov_2_2026, months(1) / 2 + months(1), "1 1/2 months")) == "2026-12-17");
}
