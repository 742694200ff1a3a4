// SPDX-License-Identifier: MIT
// What the log leaves on hand. Recipes and amounts are invented; each sum is written out.
#include <chrono>

#include "scruple/plan/calendar.hpp"
#include "scruple/plan/stock_sheet.hpp"
#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

using check::Exact;

const std::string logged_heron = R"(
recipe Heron
    capacity   one-shot, 250 ml working per film 135

part A
    water                           700 ml
    sodium sulfite (anhydrous)      90 g, 5 g now
    metol                           5 g
    sodium sulfite                  the rest
    potassium bromide (10 % w/v)    8 ml
    water to make                   1 l

working
    water                           600 ml
    part A                          100 ml
    water to make                   1 l
)";

check::Day day(int year, unsigned month, unsigned of_month) {
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                           std::chrono::day(of_month)};
    return static_cast<check::Day>(std::chrono::sys_days(date).time_since_epoch().count());
}

/// The shelf on the last day of 2026.
struct Shelf {
    explicit Shelf(const std::string& log, check::Day on = day(2026, 12, 31), const std::string& recipes = logged_heron)
        : workspace(recipes + "\nlog\n" + log), sheet(plan::stock_sheet(workspace.model(), on)) {}

    /// g or ml of a chemical in a form (or strength); 0 where there is none.
    [[nodiscard]] Exact of(const std::string& name, const std::string& form = "") const {
        for (const auto& item : sheet.chemicals)
            if (item.name == name && item.form_name == form) return item.moves.on_hand;
        return 0;
    }
    [[nodiscard]] Exact of_solution(const std::string& name) const {
        for (const auto& item : sheet.solutions)
            if (item.name == name) return item.moves.on_hand;
        return 0;
    }

    Workspace workspace;
    plan::StockSheet sheet;
};

TEST_CASE("received and used add up, in whichever unit the line is written") {
    // One avoirdupois ounce is 28.349523125 g exactly (the international pound of 1959, 453.59237 g).
    const Shelf shelf(
        "    2026-11-02 received   sodium sulfite (anhydrous) 500 g\n"
        "    2026-11-03 received   sodium sulfite (anhydrous) 4 oz av\n"
        "    2026-11-04 used       sodium sulfite (anhydrous) 20 g for a test\n");
    CHECK(shelf.of("sodium sulfite") == 480 + 4 * Exact(28349523125, 1000000000));
}

TEST_CASE("forms are counted apart") {
    const Shelf shelf(
        "    2026-11-02 received   sodium carbonate (anhydrous) 500 g\n"
        "    2026-11-02 received   sodium carbonate (monohydrate) 250 g\n");
    CHECK(shelf.of("sodium carbonate", "anhydrous") == 500);
    CHECK(shelf.of("sodium carbonate", "monohydrate") == 250);
}

TEST_CASE("mixing takes the chemicals and gives the solution") {
    const Shelf shelf(
        "    2026-11-02 received   sodium sulfite (anhydrous) 500 g\n"
        "    2026-11-02 received   metol 100 g\n"
        "    2026-11-02 received   potassium bromide 50 g\n"
        "    2026-11-05 mixed      Heron part A 500 ml\n");
    CHECK(shelf.of("sodium sulfite") == 455);               // half of 90 g, divided weighing or not
    CHECK(shelf.of("metol") == Exact(195, 2));              // 100 - 2.5
    CHECK(shelf.of("potassium bromide") == Exact(248, 5));  // 4 ml of 10 % hold 0.4 g
    CHECK(shelf.of_solution("Heron part A") == 500);
}

TEST_CASE("a percent solution on the shelf is used before the salt") {
    const Shelf shelf(
        "    2026-11-02 received   potassium bromide 50 g\n"
        "    2026-11-02 on shelf   potassium bromide (10 % w/v) 5 ml\n"
        "    2026-11-02 received   sodium sulfite (anhydrous) 500 g\n"
        "    2026-11-02 received   metol 100 g\n"
        "    2026-11-05 mixed      Heron part A 1 l\n");
    CHECK(shelf.of("potassium bromide", "10 % w/v") == 0);   // 5 of the 8 ml
    CHECK(shelf.of("potassium bromide") == Exact(497, 10));  // and 3 ml from 0.3 g of salt
}

TEST_CASE("a liquid received by weight is counted in ml") {
    const Shelf shelf(
        "    2026-11-02 received   propylene glycol 520 g\n"
        "    2026-11-03 received   propylene glycol 100 ml\n");
    CHECK(shelf.of("propylene glycol") == 600);  // 520 g at 1.04 g/ml are 500 ml
}

TEST_CASE("films processed take the bath that was mixed, and then what it is made of") {
    const std::string mixed =
        "    2026-11-05 received   sodium sulfite (anhydrous) 500 g\n"
        "    2026-11-05 received   metol 100 g\n"
        "    2026-11-05 received   potassium bromide 50 g\n"
        "    2026-11-05 mixed      Heron part A 1 l\n";
    const Shelf fresh(mixed + "    2026-11-12 processed  4 films 135 in Heron working\n");
    CHECK(fresh.of_solution("Heron part A") == 900);  // 4 × 250 ml, a tenth of them part A
    CHECK(fresh.of_solution("Heron working") == 0);
    const Shelf ready(mixed +
                      "    2026-11-11 mixed      Heron working 600 ml\n"
                      "    2026-11-12 processed  4 films 135 in Heron working\n");
    CHECK(ready.of_solution("Heron part A") == 900);  // 60 for the mixing, 40 for the 400 ml that were wanting
    CHECK(ready.of_solution("Heron working") == 0);
}

TEST_CASE("on shelf sets, discarded without an amount empties") {
    const Shelf shelf(
        "    2026-11-02 on shelf    Heron part A 800 ml\n"
        "    2026-11-03 discarded   Heron part A 300 ml\n"
        "    2026-11-04 on shelf    metol 60 g\n"
        "    2026-11-05 on shelf    metol 18 g\n"
        "    2026-11-06 on shelf    sodium carbonate (monohydrate) 90 g\n"
        "    2026-11-07 discarded   sodium carbonate (monohydrate)\n");
    CHECK(shelf.of_solution("Heron part A") == 500);
    CHECK(shelf.of("metol") == 18);
    CHECK(shelf.of("sodium carbonate", "monohydrate") == 0);
    const Shelf emptied("    2026-11-02 on shelf    Heron part A 800 ml\n    2026-11-03 discarded   Heron part A\n");
    CHECK(emptied.of_solution("Heron part A") == 0);
}

TEST_CASE("discarded of a day pours off what that day put on the shelf and nothing else") {
    const std::string two =
        "    2026-11-02 received    sodium sulfite (anhydrous) 1 kg\n    2026-11-02 received    metol 100 g\n"
        "    2026-11-03 mixed       Heron part A 1 l\n    2026-11-10 mixed       Heron part A 500 ml\n";
    const auto left = [&](const std::string& line) {
        std::vector<std::pair<std::string, std::string>> lots;
        const Shelf some(two + line + "\n");
        for (const auto& lot : some.sheet.solutions.front().lots)
            lots.emplace_back(plan::day_text(lot.line.day), shown(lot.left));
        return lots;
    };
    using Left = std::vector<std::pair<std::string, std::string>>;
    CHECK(left("    2026-11-20 discarded Heron part A of 2026-11-10") == Left{{"2026-11-03", "1000 ml"}});
    CHECK(left("    2026-11-20 discarded Heron part A of 2026-11-03") == Left{{"2026-11-10", "500 ml"}});
    CHECK(left("    2026-11-20 discarded Heron part A 200 ml of 2026-11-10") ==
          Left{{"2026-11-03", "1000 ml"}, {"2026-11-10", "300 ml"}});
    // The oldest is taken first where no day is said.
    CHECK(left("    2026-11-20 discarded Heron part A 200 ml") ==
          Left{{"2026-11-03", "800 ml"}, {"2026-11-10", "500 ml"}});
    // What was poured off does not come back by a count of what else there is.
    CHECK(left("    2026-11-20 discarded Heron part A of 2026-11-03\n    2026-11-21 on shelf Heron part A 600 ml") ==
          Left{{"2026-11-10", "500 ml"}, {"2026-11-21", "100 ml"}});
    const Shelf jar(
        "    2026-11-02 received metol 100 g\n    2026-11-09 received metol 50 g\n"
        "    2026-11-20 discarded metol of 2026-11-09\n");
    REQUIRE(jar.sheet.chemicals.front().lots.size() == 1);
    CHECK(shown(jar.sheet.chemicals.front().on_hand) == "100 g");
    const Shelf too_much(two + "    2026-11-20 discarded Heron part A 800 ml of 2026-11-10\n");
    REQUIRE(!too_much.sheet.faults.empty());
    CHECK(too_much.sheet.faults.back().name == "Heron part A");
    CHECK(shown(too_much.sheet.faults.back().wanting) == "300 ml");
}

TEST_CASE("a jar of a chemical that keeps so long is said to be past it") {
    const std::string salt =
        "\nchemical hedge salt\n    form anhydrous NaCl\n    keeps 1 year from \"the label of the jar\"\n";
    const Shelf jars("    2025-11-02 received hedge salt 100 g\n    2026-11-02 received hedge salt 50 g\n",
                     day(2026, 12, 31), logged_heron + salt);
    const auto& lots = jars.sheet.chemicals.front().lots;
    REQUIRE(lots.size() == 2);
    CHECK(plan::day_text(*lots[0].use_by) == "2026-11-02");
    CHECK(warns(lots[0].warnings, "past its use-by date of 2026-11-02 by 59 days"));
    CHECK(plan::day_text(*lots[1].use_by) == "2027-11-02");
    CHECK(lots[1].warnings.empty());
}

TEST_CASE("what films take along out of a bath that is kept is gone from its bottle, and lengthens what comes next") {
    const std::string kept = R"(
recipe Plover
    capacity reused, 20 films 135 per 1 l, 10 ml carried over per film 135, 5 % longer per film 135
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l
)";
    const Shelf bath(
        "    2026-11-02 received sodium sulfite (anhydrous) 1 kg\n    2026-11-03 mixed Plover 1 l\n"
        "    2026-11-10 processed 6 films 135 in Plover\n",
        day(2026, 12, 31), kept);
    const auto& lot = bath.sheet.solutions.front().lots.front();
    CHECK(shown(lot.left) == "940 ml");
    CHECK(lot.longer == "30\u00A0% longer");
    CHECK(bath.sheet.solutions.front().moves.processed == Exact(60));
    CHECK(*lot.percent_used == Exact(30));
}

TEST_CASE("a day sees its own lines and those before it, however they are ordered") {
    const std::string log = "    2026-11-10 received   metol 30 g\n    2026-11-02 received   metol 10 g\n";
    CHECK(Shelf(log, day(2026, 11, 1)).of("metol") == 0);
    CHECK(Shelf(log, day(2026, 11, 2)).of("metol") == 10);
    CHECK(Shelf(log, day(2026, 11, 10)).of("metol") == 40);
}

TEST_CASE("nothing on the shelf is ever less than nothing") {
    const Shelf shelf(
        "    2026-11-02 received   metol 10 g\n"
        "    2026-11-03 used       metol 25 g\n"
        "    2026-11-04 received   metol 5 g\n");
    CHECK(shelf.of("metol") == 5);
}

TEST_CASE("what a replenished bath is given comes off the replenisher, films through it take nothing more") {
    const std::string siskin = R"(
recipe Siskin

working
    replenish  20 ml per film 135
    water                        3 l
    sodium sulfite (anhydrous)   300 g
    water to make                4 l

replenisher
    water                        700 ml
    sodium sulfite (anhydrous)   90 g
    water to make                1 l
)";
    const Shelf shelf(R"(
    2026-11-01 on shelf      Siskin working 4 l
    2026-11-01 on shelf      Siskin replenisher 1 l
    2026-11-05 processed     6 films 135 in Siskin working
    2026-11-05 replenished   Siskin working 120 ml
    2026-11-06 replenished   Siskin replenisher 30 ml
)",
                      day(2026, 12, 1), siskin);
    CHECK(shelf.of_solution("Siskin working") == 4000);
    CHECK(shelf.of_solution("Siskin replenisher") == 850);
    CHECK(shelf.sheet.chemicals.empty());
}

TEST_CASE("of a bath whose capacity is not known, processing takes what there is and nothing else") {
    const std::string knot = R"(
recipe Knot
    water           500 ml
    metol           10 g
    water to make   1 l
)";
    const Shelf shelf(R"(
    2026-11-01 on shelf    metol 50 g
    2026-11-01 on shelf    Knot 300 ml
    2026-11-05 processed   6 films 135 in Knot
)",
                      day(2026, 12, 1), knot);
    CHECK(shelf.of("metol") == 50);
    CHECK(shelf.of_solution("Knot") == 0);
}

}  // namespace
}  // namespace scruple::test
