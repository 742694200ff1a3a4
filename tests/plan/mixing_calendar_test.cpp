// SPDX-License-Identifier: MIT
// A calendar of mixing from recipe text. Recipes are invented; days are those of the calendar.
#include "scruple/plan/mixing_calendar.hpp"

#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

std::string month(const std::string& keeps) {
    return "recipe Plover\n    " + keeps + R"(
    capacity 10 films 135 per 1 l
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

process p
    Plover   5 min

plan one
    2026-12-01   4 films 135 through p
    2026-12-08   4 films 135 through p
    2026-12-20   4 films 135 through p
)";
}

std::vector<std::string> days_of(const std::string& keeps) {
    std::vector<std::string> days;
    const Workspace workspace(month(keeps));
    for (const auto& day : plan::mixing_calendar(workspace.model(), 0, check::none).days)
        days.push_back(plan::day_text(day.day));
    return days;
}

TEST_CASE("a bottle that has been opened lasts as long as a half full one, from the day of mixing on") {
    using Days = std::vector<std::string>;
    CHECK(days_of("keeps 6 weeks") == Days{"2026-12-01"});
    CHECK(days_of("keeps 6 weeks full, 2 weeks half full") == Days{"2026-12-01", "2026-12-20"});
    // On the 1st and the 8th would be as few; the 20th waits less.
    CHECK(days_of("keeps 6 weeks full, 12 days half full") == Days{"2026-12-01", "2026-12-20"});
    CHECK(days_of("keeps 6 weeks full, 5 days half full") == Days{"2026-12-01", "2026-12-08", "2026-12-20"});
    CHECK(days_of("use within 2 h") == Days{"2026-12-01", "2026-12-08", "2026-12-20"});
}

TEST_CASE("what is on hand is used up to its last day and not after it") {
    // Mixed on 25 November, two weeks half full: until 9 December. 400 ml a day are used on the 1st, 8th and 20th.
    const Workspace workspace(month("keeps 6 weeks full, 2 weeks half full") +
                              "\nlog\n    2026-11-20 received sodium sulfite (anhydrous) 1 kg\n"
                              "    2026-11-25 mixed Plover 1 l\n");
    const auto calendar = plan::mixing_calendar(workspace.model(), 0, check::none);
    REQUIRE(calendar.days.size() == 1);
    CHECK(plan::day_text(calendar.days.front().day) == "2026-12-20");
    CHECK(shown(calendar.days.front().mixings.front().volume) == "400 ml");
    CHECK(warns(calendar.notes, "200 ml of Plover on hand is not used after 2026-12-09, its last day"));
}

TEST_CASE("bottles leave the least air, and are the fewest that do") {
    const std::vector<check::Exact> sizes{100, 250, 500, 1000};
    using Rows = std::vector<std::pair<std::int64_t, check::Exact>>;
    CHECK(plan::bottles_for(950, sizes) == Rows{{1, 500}, {1, 250}, {2, 100}});
    CHECK(plan::bottles_for(2000, sizes) == Rows{{2, 1000}});
    CHECK(plan::bottles_for(40, sizes) == Rows{{1, 100}});
    CHECK(plan::bottles_for(40, {}).empty());
}

}  // namespace
}  // namespace scruple::test
