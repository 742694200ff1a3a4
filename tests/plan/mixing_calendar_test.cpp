// SPDX-License-Identifier: MIT
// A calendar of mixing from recipe text. Recipes are invented; days are those of the calendar.
#include "scruple/plan/mixing_calendar.hpp"

#include <algorithm>
#include <random>

#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

std::string month(const std::string& keeps, const std::string& capacity = "10 films 135 per 1 l") {
    return "recipe Plover\n    " + keeps + "\n    capacity " + capacity + R"(
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

TEST_CASE("only what is used after the day of mixing has a last day") {
    const Workspace workspace(month("keeps 6 weeks full, 12 days half full"));
    std::vector<std::string> last;
    for (const auto& day : plan::mixing_calendar(workspace.model(), 0, check::none).days)
        for (const auto& mixing : day.mixings) last.push_back(mixing.use_by ? plan::day_text(*mixing.use_by) : "");
    // 12 days from the 1st; the 20th's is used on the 20th.
    CHECK(last == std::vector<std::string>{"2026-12-13", ""});
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
    using Bottles = std::vector<check::Bottle>;
    const Bottles sizes{{100, {}}, {250, {}}, {500, {}}, {1000, {}}};
    using Rows = std::vector<std::pair<std::int64_t, check::Exact>>;
    CHECK(plan::bottles_for(950, sizes) == Rows{{1, 500}, {1, 250}, {2, 100}});
    CHECK(plan::bottles_for(2000, sizes) == Rows{{2, 1000}});
    CHECK(plan::bottles_for(40, sizes) == Rows{{1, 100}});
    CHECK(plan::bottles_for(40, {}).empty());
    const Bottles few{{100, 1}, {500, 2}};
    CHECK(plan::bottles_for(950, few) == Rows{{2, 500}});
    CHECK(plan::bottles_for(1050, few) == Rows{{2, 500}, {1, 100}});
    CHECK(plan::bottles_for(1101, few).empty());
}

/// Two solutions of 1.2 l each for the month, both of which last, on three days.
std::string two_for_a_month(const std::string& bottles) {
    const std::string recipe = R"(
    keeps    6 months
    capacity one-shot, 100 ml per film 135
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l
)";
    return "recipe Plover" + recipe + "\nrecipe Dunlin" + recipe + R"(
process p
    Plover   5 min
    Dunlin   5 min

plan one
    2026-12-01   4 films 135 through p
    2026-12-08   4 films 135 through p
    2026-12-20   4 films 135 through p

bench b
    bottle )" +
           bottles + "\n";
}

struct MixedOn {
    std::string day, name, volume;
    friend bool operator==(const MixedOn&, const MixedOn&) = default;
};

std::vector<MixedOn> mixed_on(const plan::MixingCalendar& calendar) {
    std::vector<MixedOn> all;
    for (const auto& day : calendar.days)
        for (const auto& mixing : day.mixings)
            all.push_back({plan::day_text(day.day), mixing.name, shown(mixing.volume)});
    std::ranges::sort(all, {}, [](const MixedOn& one) { return std::pair(one.day, one.name); });
    return all;
}

TEST_CASE("what the bottles of the bench do not hold is mixed when there is room") {
    const auto calendar = [](const std::string& bottles) {
        const Workspace workspace(two_for_a_month(bottles));
        return plan::mixing_calendar(workspace.model(), 0, 0);
    };
    using All = std::vector<MixedOn>;
    // 12 × 100 ml of each.
    const All at_once{{"2026-12-01", "Dunlin", "1200 ml"}, {"2026-12-01", "Plover", "1200 ml"}};
    CHECK(mixed_on(calendar("1.2 l")) == at_once);
    CHECK(mixed_on(calendar("2 of 1.2 l")) == at_once);
    CHECK(calendar("2 of 1.2 l").proven);
    // One bottle: one of the two can be mixed ahead, the other only for the day. That is three days of weighing, with
    // four mixings.
    const auto tight = calendar("1.2 l, 1 of 2 l");
    CHECK(mixed_on(tight) == at_once);
    const auto scarce = calendar("1 of 1.2 l");
    CHECK(mixed_on(scarce).size() == 4);
    CHECK(scarce.weighing_days == 3);
    CHECK_FALSE(scarce.proven);
    CHECK(warns(scarce.notes, "since bottles are wanting"));
    // No bottle holds what even one day leaves for the next: nothing is mixed ahead.
    CHECK(mixed_on(calendar("1 of 50 ml")).size() == 6);
}

TEST_CASE("a bottle that has been emptied is filled again") {
    const Workspace workspace(month("keeps 6 weeks full, 12 days half full") +
                              "    2026-12-27   4 films 135 through p\n\nbench Sill\n    bottle   1 of 1.2 l\n");
    const auto calendar = plan::mixing_calendar(workspace.model(), 0, 0);
    CHECK(mixed_on(calendar) ==
          std::vector<MixedOn>{{"2026-12-01", "Plover", "800 ml"}, {"2026-12-20", "Plover", "800 ml"}});
    CHECK(calendar.proven);
}

std::string reused(const std::string& facts) {
    return month("keeps 6 months", facts);
}

const plan::Mixing& only_mixing(const plan::MixingCalendar& calendar) {
    REQUIRE(calendar.days.size() == 1);
    REQUIRE(calendar.days.front().mixings.size() == 1);
    return calendar.days.front().mixings.front();
}

TEST_CASE("a tank is filled again each time although some of it has gone over into the next bath") {
    const auto volume = [](const std::string& facts) {
        const Workspace workspace(reused(facts));
        return shown(only_mixing(plan::mixing_calendar(workspace.model(), 0, check::none)).volume);
    };
    // 12 films at 20 a litre are 600 ml.
    CHECK(volume("reused, 20 films 135 per 1 l") == "600 ml");
    // Four films at once ask for 4 × 250 ml.
    CHECK(volume("reused, 20 films 135 per 1 l, 250 ml per film 135") == "1000 ml");
    // Before the last four films, eight have taken 10 ml each: 1000 ml + 80 ml.
    CHECK(volume("reused, 20 films 135 per 1 l, 250 ml per film 135, 10 ml carried over per film 135") == "1080 ml");
    // What it may process is more than that.
    CHECK(volume("reused, 10 films 135 per 1 l, 250 ml per film 135, 10 ml carried over per film 135") == "1200 ml");
}

TEST_CASE("times grow by what went through the same batch before") {
    const Workspace workspace(reused("reused, 20 films 135 per 1 l, 5 % longer per film 135"));
    const auto calendar = plan::mixing_calendar(workspace.model(), 0, check::none);
    const auto& longer = only_mixing(calendar).longer;
    REQUIRE(longer.size() == 2);
    CHECK(longer[0] == "2026-12-08: 20\u00A0% longer");
    CHECK(longer[1] == "2026-12-20: 40\u00A0% longer");
    const Workspace by_time(reused("reused, 20 films 135 per 1 l, 15 s longer per film 135"));
    CHECK(only_mixing(plan::mixing_calendar(by_time.model(), 0, check::none)).longer.front() ==
          "2026-12-08: 60\u00A0s longer");
}

// ---- what is on hand ----

struct OnHand {
    check::Day last;
    int films;
};
struct Needed {
    check::Day day;
    int films;
};

/// The most films that what is on hand can do for, going through every way to share it out.
int most_done(std::vector<OnHand> batches, const std::vector<Needed>& needs, std::size_t need = 0,
              std::size_t batch = 0, int left = -1) {
    if (need == needs.size()) return 0;
    if (left < 0) left = needs[need].films;
    if (batch == batches.size()) return most_done(batches, needs, need + 1);
    int most = 0;
    const int can = batches[batch].last >= needs[need].day ? std::min(left, batches[batch].films) : 0;
    for (int films = 0; films <= can; ++films) {
        batches[batch].films -= films;
        most = std::max(most, films + most_done(batches, needs, need, batch + 1, left - films));
        batches[batch].films += films;
    }
    return most;
}

TEST_CASE("of what is on hand as little goes to waste as can be, of all ways to share it out") {
    std::mt19937 random(1201);
    const std::string recipe =
        "recipe Plover\n    keeps 20 days\n    capacity one-shot, 100 ml per film 135\n    water 700 ml\n"
        "    sodium sulfite (anhydrous) 100 g\n    water to make 1 l\n\nprocess p\n    Plover   5 min\n\nplan one\n";
    const check::Day first = 20788;  // 2026-12-01, `date -d @$((20788 * 86400)) -u`
    for (int round = 0; round < 60; ++round) {
        std::vector<OnHand> batches;
        std::vector<Needed> needs;
        std::string log = "\nlog\n    2026-10-01 received sodium sulfite (anhydrous) 1 kg\n", plan;
        for (check::Day mixed = first - 19; batches.size() < 3; mixed += static_cast<check::Day>(1 + random() % 5)) {
            batches.push_back({mixed + 20, static_cast<int>(1 + random() % 3)});
            log += "    " + plan::day_text(mixed) + " mixed Plover " + std::to_string(batches.back().films * 100) +
                   " ml\n";
        }
        for (check::Day day = first; needs.size() < 4; day += static_cast<check::Day>(1 + random() % 6)) {
            needs.push_back({day, static_cast<int>(1 + random() % 3)});
            plan += "    " + plan::day_text(day) + " " + std::to_string(needs.back().films) + " films 135 through p\n";
        }
        const Workspace workspace(recipe + plan + log);
        check::Exact mixed;
        for (const auto& day : plan::mixing_calendar(workspace.model(), 0, check::none).days)
            for (const auto& mixing : day.mixings) mixed += mixing.volume.value;
        int films = 0;
        for (const auto& need : needs) films += need.films;
        CAPTURE(plan + log);
        CHECK(mixed == check::Exact(100 * (films - most_done(batches, needs))));
    }
}

}  // namespace
}  // namespace scruple::test
