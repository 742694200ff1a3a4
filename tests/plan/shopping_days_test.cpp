// SPDX-License-Identifier: MIT
// The days of a plan, held to the calendar of GNU date (coreutils).
#include <cstdio>
#include <sstream>

#include "scruple/plan/calendar.hpp"
#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

/// What a command prints; commands of this test are fixed text.
std::string printed_by(const std::string& command) {
    std::string all;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 256> piece{};
    while (fgets(piece.data(), piece.size(), pipe) != nullptr) all += piece.data();
    REQUIRE(pclose(pipe) == 0);
    return all;
}

/// Every such weekday (1 Monday … 7 Sunday) from a date on for so many days, by GNU date.
std::vector<std::string> by_gnu_date(const std::string& from, int days, const std::string& weekday) {
    std::istringstream lines(printed_by("for i in $(seq 0 " + std::to_string(days - 1) + "); do date -u -d \"" + from +
                                        " +$i days\" '+%u %F'; done"));
    std::vector<std::string> found;
    std::string of_week, date;
    while (lines >> of_week >> date)
        if (of_week == weekday) found.push_back(date);
    return found;
}

std::vector<std::string> planned(const std::string& series) {
    const Workspace workspace(R"(
recipe Knot
    capacity 10 films 135 per 1 l
    water           500 ml
    metol           1 g
    water to make   1 l

process p
    Knot   5 min

plan series
    each )" + series + "   1 film 135 through p\n");
    std::vector<std::string> days;
    for (const auto day : workspace.model().plans.front().entries.front().days) days.push_back(plan::day_text(day));
    return days;
}

TEST_CASE("a weekday series goes across month ends, years and leap days as GNU date counts them") {
    CHECK(planned("Thursday from 2026-11-20 to 2027-01-10") == by_gnu_date("2026-11-20", 52, "4"));
    CHECK(planned("Tuesday from 2028-02-15 to 2028-03-14") == by_gnu_date("2028-02-15", 29, "2"));  // holds 29 February
    CHECK(planned("Monday from 2100-02-20 to 2100-03-05") == by_gnu_date("2100-02-20", 14, "1"));   // no leap year
    CHECK(planned("Sunday from 2027-02-28 to 2027-02-28") == by_gnu_date("2027-02-28", 1, "7"));
}

TEST_CASE("days are written as GNU date writes them") {
    for (const check::Day day : {0, 59, 11016, 20789, 21244, 47540}) {
        const std::string date = printed_by("date -u -d \"1970-01-01 +" + std::to_string(day) + " days\" +%F");
        CHECK(plan::day_text(day) + "\n" == date);
    }
}

TEST_CASE("the list's first and last day are those of the plan, whatever the order of its lines") {
    const Workspace workspace(R"(
recipe Knot
    capacity 10 films 135 per 1 l
    water           500 ml
    metol           1 g
    water to make   1 l

process p
    Knot   5 min

plan loose
    2026-12-20   1 film 135 through p
    each Monday from 2026-11-30 to 2026-12-31   1 film 135 through p
    2026-12-05   1 film 135 through p
)");
    CHECK(workspace.list().first_day == "2026-11-30");
    CHECK(workspace.list().last_day == "2026-12-28");
    CHECK(solution_of(workspace.list(), "Knot").needed.exact == 700);  // five Mondays and two single days
}

}  // namespace
}  // namespace scruple::test
