// SPDX-License-Identifier: MIT
// Days of the calendar, against Python's datetime (tests/reference/days.csv).
#include <algorithm>

#include "figures.hpp"

using namespace scruple;
using test::reference_rows;

namespace {

const std::string process = "process tap\n    wash 1 min\nplan Trial\n";
const std::string through = "   1 sheets 4x5 in through tap\n";

std::vector<check::Day> days_of(test::Workspace& workspace, const std::string& when) {
    workspace.clear();
    workspace.add("plan.scruple", process + when + through);
    workspace.check();
    REQUIRE(workspace.model().plans.size() == 1);
    const auto& entries = workspace.model().plans.front().entries;
    return entries.empty() ? std::vector<check::Day>{} : entries.front().days;
}

}  // namespace

TEST_CASE("a date is the right number of days from 1970") {
    test::Workspace workspace;
    for (const auto& row : reference_rows("days.csv")) {
        CAPTURE(row.at("date"));
        const auto days = days_of(workspace, row.at("date"));
        CHECK_MESSAGE(workspace.diagnostics().empty(), described(workspace));
        REQUIRE(days.size() == 1);
        CHECK(days.front() == std::stoi(row.at("days_since_1970_01_01")));
    }
}

TEST_CASE("each weekday is found from its own date, and from no other day") {
    std::string lines;
    std::vector<std::size_t> wanted;
    for (const auto& row : reference_rows("days.csv")) {
        for (const std::string name : {"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"}) {
            lines += "each " + name + " from " + row.at("date") + " to " + row.at("date") + through;
            wanted.push_back(name == row.at("weekday") ? 1 : 0);
        }
    }
    test::Workspace workspace;
    workspace.add("plan.scruple", process + lines);
    workspace.check();
    const auto& entries = workspace.model().plans.at(0).entries;
    REQUIRE(entries.size() == wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) CHECK(entries[i].days.size() == wanted[i]);
    CHECK(workspace.diagnostics().size() == static_cast<std::size_t>(std::ranges::count(wanted, 0u)));
}

TEST_CASE("each Thursday of a month, both ends included") {
    test::Workspace workspace;
    // 2026-12-03 and 2026-12-31 are Thursdays (days.csv).
    const auto days = days_of(workspace, "each Thursday from 2026-12-03 to 2026-12-31");
    CHECK(days == std::vector<check::Day>{20790, 20797, 20804, 20811, 20818});
    CHECK(days_of(workspace, "each Thursday from 2026-12-04 to 2026-12-30").size() == 3);
}

TEST_CASE("days that the Gregorian calendar does not have are refused") {
    test::Workspace workspace;
    // Every fourth year has a 29 February, but of the full centuries only every fourth.
    for (const auto date : {"2026-02-29", "1900-02-29", "2100-02-29", "2026-04-31", "2026-00-10", "2026-10-00",
                            "2026-13-01", "2026-12-32"}) {
        CAPTURE(date);
        CHECK(days_of(workspace, date).empty());
        REQUIRE(workspace.diagnostics().size() == 1);
        CHECK(workspace.diagnostics().front().kind == diagnostics::Kind::no_such_day);
    }
    CHECK(days_of(workspace, "2000-02-29").size() == 1);
}
