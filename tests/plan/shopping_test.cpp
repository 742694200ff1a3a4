// SPDX-License-Identifier: MIT
// From a plan down to chemicals. Recipes, prices and amounts are invented; each sum is written out.
#include "shopping_workspace.hpp"
#include "support/sanitized.hpp"

namespace scruple::test {
namespace {

using check::Exact;

const std::string heron = R"(
recipe Heron
    capacity   one-shot, 250 ml working per film 135

part A
    water                        700 ml
    sodium sulfite (anhydrous)   90 g
    metol                        5 g
    water to make                1 l

part B
    water                        700 ml
    sodium carbonate (anhydrous) 40 g
    water to make                1 l

working
    water                        600 ml
    part A                       100 ml
    part B                       50 ml
    water to make                1 l

process roll film
    Heron working                8 min at 20 C
    wash                         10 min
)";

// 6 + 2 × 5 films: 16 × 250 ml = 4 l of working, so 400 ml of part A and 200 ml of part B:
// 36 g of sulfite, 2 g of metol, 8 g of carbonate.
const std::string december = R"(
plan December
    2026-12-03                                   6 films 135 through roll film
    each Thursday from 2026-12-10 to 2026-12-17  5 films 135 through roll film
)";

TEST_CASE("the plan goes down through the working solution and its parts to the chemicals") {
    const Workspace workspace(heron + december);
    const auto list = workspace.list();
    CHECK(list.plan == "December");
    CHECK(list.first_day == "2026-12-03");
    CHECK(list.last_day == "2026-12-17");
    CHECK(solution_of(list, "Heron working").needed.exact == 4000);
    CHECK(solution_of(list, "Heron part A").to_mix.exact == 400);
    CHECK(solution_of(list, "Heron part B").to_mix.exact == 200);
    CHECK(shown(need_of(list, "sodium sulfite").needed) == "36 g");
    CHECK(shown(need_of(list, "metol").needed) == "2 g");
    CHECK(shown(need_of(list, "sodium carbonate", "anhydrous").needed) == "8 g");
    CHECK(list.chemicals.size() == 3);  // water comes from the tap
    const auto& working = solution_of(list, "Heron working");
    REQUIRE(working.because.size() == 3);
    CHECK(plain_blanks(working.because[0]) == "6 films 135 on 2026-12-03: 6 × 250 ml");
    CHECK(plain_blanks(working.because[2]) == "5 films 135 on 2026-12-17: 5 × 250 ml");
    CHECK(plain_blanks(need_of(list, "metol").because.at(0)) == "Heron part A 400 ml: 2 g");
    CHECK(warns(list.warnings, "no supplier in the workspace sells metol"));
}

TEST_CASE("what is on hand is taken off at each level") {
    const Workspace workspace(heron + december + R"(
log
    2026-11-28 on shelf   Heron working 500 ml
    2026-11-28 on shelf   Heron part A 150 ml
    2026-11-28 on shelf   metol 0.5 g
    2026-12-02 received   sodium sulfite (anhydrous) 500 g
)");
    const auto list = workspace.list();
    // 4 l - 0.5 l = 3.5 l to mix: 350 ml of A, of which 150 ml are there: 200 ml, 18 g of sulfite, 1 g of metol.
    CHECK(solution_of(list, "Heron working").to_mix.exact == 3500);
    CHECK(solution_of(list, "Heron part A").needed.exact == 350);
    CHECK(solution_of(list, "Heron part A").on_hand.exact == 150);
    CHECK(solution_of(list, "Heron part A").to_mix.exact == 200);
    CHECK(need_of(list, "sodium sulfite").to_buy.exact == 0);
    CHECK(need_of(list, "sodium sulfite").left_over.exact == 482);
    CHECK(need_of(list, "sodium sulfite").packs.empty());
    CHECK(need_of(list, "metol").to_buy.exact == Exact(1, 2));
    CHECK(need_of(list, "sodium carbonate", "anhydrous").needed.exact == 7);  // 175 ml of B
}

TEST_CASE("lines of the log after the first day of the plan are not counted, and that is said") {
    const Workspace workspace(heron + december +
                              "\nlog\n    2026-12-03 received   metol 1 g\n"
                              "    2026-12-04 received   metol 100 g\n");
    const auto list = workspace.list();
    CHECK(need_of(list, "metol").on_hand.exact == 1);
    CHECK(warns(list.warnings, "lines of the log after 2026-12-03"));
}

TEST_CASE("a line of the log that takes more than there was is named") {
    const Workspace workspace(heron + december +
                              "\nlog\n    2026-11-02 received   metol 10 g\n"
                              "    2026-11-03 used       metol 25 g\n");
    CHECK(warns(workspace.list().warnings, "`2026-11-03 used metol 25 g` takes 15 g more metol than there was"));
}

TEST_CASE("a line that took more than there was no longer matters once the shelf has been looked at") {
    const std::string log =
        "\nlog\n    2026-11-03 used       metol 25 g\n    2026-11-03 mixed      Heron working 1 l\n";
    const auto before = Workspace(heron + december + log).list();
    CHECK(warns(before.warnings, "`2026-11-03 used metol 25 g` takes 25 g more metol"));
    CHECK(warns(before.warnings, "`2026-11-03 mixed Heron working 1000 ml` takes 100 ml more Heron part A"));
    const auto looked = Workspace(heron + december + log +
                                  "    2026-11-05 on shelf   metol 30 g\n"
                                  "    2026-11-05 discarded  Heron part A\n")
                            .list();
    CHECK_FALSE(warns(looked.warnings, "metol 25 g"));
    CHECK_FALSE(warns(looked.warnings, "Heron part A than"));
    CHECK(warns(looked.warnings, "takes 50 ml more Heron part B"));
    CHECK(need_of(looked, "metol").on_hand.exact == 30);
}

TEST_CASE("solutions come in the order of the process, each before the parts it is made of") {
    const auto list = Workspace(heron + december).list();
    REQUIRE(list.solutions.size() == 3);
    CHECK(list.solutions[0].name == "Heron working");
    CHECK(list.solutions[1].name == "Heron part A");
    CHECK(list.solutions[2].name == "Heron part B");
}

TEST_CASE("another form on hand counts by mole") {
    const Workspace workspace(heron + december +
                              "\nlog\n    2026-11-02 received   sodium carbonate (monohydrate) 5 g\n");
    const auto list = workspace.list();
    const auto& need = need_of(list, "sodium carbonate", "anhydrous");
    // Na2CO3 is 105.988 g/mol and Na2CO3·H2O 124.003 (from the CIAAW 2021 abridged weights: Na 22.990, C 12.011,
    // O 15.999, H 1.008), so 5 g of crystals do for 5 × 105.988 / 124.003 = 4.2736 g of the 8 g.
    const Exact does_for = Exact(5) * Exact(105988, 1000) / Exact(124003, 1000);
    CHECK(need.on_hand.exact == does_for);
    CHECK(need.to_buy.exact == 8 - does_for);
    CHECK(shown(need.to_buy) == "3.8 g");  // 3.7264 rounded up
    CHECK(plain_blanks(need.because.back()) == "5 g sodium carbonate (monohydrate) on hand does for 4.3 g");
}

TEST_CASE("one jar is not counted for two needs") {
    const Workspace workspace(R"(
recipe Teal
    capacity 10 films 135 per 1 l
    water                           700 ml
    sodium carbonate (anhydrous)    50 g
    sodium carbonate (monohydrate)  50 g
    water to make                   1 l

process p
    Teal   5 min

plan one
    2026-12-03   10 films 135 through p

log
    2026-11-02 received   sodium carbonate (monohydrate) 60 g
)");
    const auto list = workspace.list();
    CHECK(need_of(list, "sodium carbonate", "monohydrate").to_buy.exact == 0);
    // Ten grams are left of the jar for the other line.
    const Exact does_for = Exact(10) * Exact(105988, 1000) / Exact(124003, 1000);
    CHECK(need_of(list, "sodium carbonate", "anhydrous").on_hand.exact == does_for);
    CHECK(need_of(list, "sodium carbonate", "monohydrate").left_over.exact == 0);
}

TEST_CASE("a bath that is kept is mixed once to fill the tank, however little it is used") {
    const auto list = Workspace(R"(
recipe Knot
    capacity reused, 10 films 135 per 1 l, 300 ml per film 135
    water                        500 ml
    sodium sulfite (anhydrous)   20 g
    water to make                1 l

process p
    Knot   5 min

plan two
    2026-12-03   2 films 135 through p
    2026-12-04   1 film 135 through p
)")
                          .list();
    // Three films spend 300 ml, but the two of the third are in 600 ml together.
    CHECK(solution_of(list, "Knot").needed.exact == 600);
    CHECK(plain_blanks(solution_of(list, "Knot").because.back()) == "600 ml at once, to fill the tank");
}

TEST_CASE("a replenished bath is mixed once, and anew when it has had as much as it may get") {
    const auto tank = [](const std::string& films) {
        return Workspace(R"(
recipe Siskin

working
    replenish  20 ml per film 135, at most 1 l per 4 l
    water                        3 l
    sodium sulfite (anhydrous)   300 g
    water to make                4 l

replenisher
    water                        700 ml
    sodium sulfite (anhydrous)   90 g
    water to make                1 l

process p
    Siskin working   5 min

plan one
    2026-12-03   )" + films +
                         " films 135 through p\n")
            .list();
    };
    const auto within = tank("50");  // 50 × 20 ml = 1 l, just as much as 4 l may get
    CHECK(solution_of(within, "Siskin replenisher").needed.exact == 1000);
    CHECK(solution_of(within, "Siskin working").needed.exact == 4000);
    CHECK(need_of(within, "sodium sulfite").needed.exact == 390);  // 300 + 90
    CHECK(solution_of(tank("51"), "Siskin working").needed.exact == 8000);
}

TEST_CASE("two baths that share a part ask for it together, once its stock is taken off") {
    const auto list = Workspace(R"(
recipe Stint
    water                        800 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

working film
    capacity   one-shot, 400 ml per film 135
    dilute stock 1+3

working paper
    capacity   10 sheets 8x10 in per 1 l
    dilute stock 1+1

process film
    Stint working film    5 min

process paper
    Stint working paper   2 min

plan both
    2026-12-03   2 films 135 through film
    2026-12-03   10 sheets 8x10 in through paper

log
    2026-12-01 on shelf   Stint 250 ml
)")
                          .list();
    // 800 ml 1+3 take 200 ml of stock, 1 l 1+1 takes 500 ml; 250 ml are there.
    CHECK(solution_of(list, "Stint").needed.exact == 700);
    CHECK(solution_of(list, "Stint").to_mix.exact == 450);
    CHECK(need_of(list, "sodium sulfite").needed.exact == 45);
}

TEST_CASE("what is made by a conversion is bought as its reagents") {
    const auto list = Workspace(R"(
conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    excess     sodium hydroxide, 2 % more than it needs
    water                               12 ml per 1 g borax (decahydrate)
    borax (decahydrate)
    sodium hydroxide

recipe Ruff
    capacity 10 films 135 per 1 l
    water                                500 ml
    sodium metaborate (anhydrous)        20 g, by conversion
    water to make                        1 l

process p
    Ruff   5 min

plan one
    2026-12-03   10 films 135 through p
)")
                          .list();
    // Molar masses from the CIAAW 2021 abridged weights (B 10.81, Na 22.990, O 15.999, H 1.008):
    // NaBO2 65.798, Na2B4O7·10H2O 381.363, NaOH 39.997. 20 g are 20 / 65.798 mol; a quarter of it of borax,
    // half of it of hydroxide, and 2 % more.
    const Exact mol = Exact(20) / Exact(65798, 1000);
    CHECK(need_of(list, "borax").needed.exact == mol / 4 * Exact(381363, 1000));
    CHECK(need_of(list, "sodium hydroxide").needed.exact == mol / 2 * Exact(39997, 1000) * Exact(102, 100));
    CHECK(shown(need_of(list, "borax").needed) == "29 g");              // 28.98
    CHECK(shown(need_of(list, "sodium hydroxide").needed) == "6.3 g");  // 6.2003
    CHECK(list.chemicals.size() == 2);
}

TEST_CASE("a conversion is bought for by what is on hand, then by what is sold") {
    const std::string two_ways = R"(
chemical boric acid
    form       crystals        H3BO3

conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    water                               12 ml per 1 g borax (decahydrate)
    borax (decahydrate)
    sodium hydroxide

conversion of sodium metaborate (anhydrous)
    reaction   boric acid + sodium hydroxide -> sodium metaborate (anhydrous) + 2 water
    water                               12 ml per 1 g boric acid
    boric acid
    sodium hydroxide

recipe Ruff
    capacity 10 films 135 per 1 l
    water                                500 ml
    sodium metaborate (anhydrous)        20 g, by conversion
    water to make                        1 l

process p
    Ruff   5 min

plan one
    2026-12-03   10 films 135 through p

)";
    const auto on_hand =
        Workspace(two_ways +
                  "log\n    2026-11-20 on shelf boric acid 100 g\n    2026-11-20 on shelf sodium hydroxide 50 g\n")
            .list();
    CHECK(shown(need_of(on_hand, "boric acid").needed) == "18.8 g");  // 20 / 65.798 × 61.831 = 18.79
    const auto sold =
        Workspace(two_ways + "supplier Shop\n    boric acid 100 g 5 EUR\n    sodium hydroxide 100 g 4 EUR\n").list();
    CHECK(shown(need_of(sold, "boric acid").to_buy) == "18.8 g");
    const auto neither = Workspace(two_ways).list();
    CHECK(shown(need_of(neither, "borax").needed) == "29 g");
}

TEST_CASE("what nobody sells and can be made is told with what it is made from") {
    const auto list = Workspace(R"(
conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    water                               12 ml per 1 g borax (decahydrate)
    borax (decahydrate)
    sodium hydroxide

recipe Ruff
    capacity 10 films 135 per 1 l
    water                                500 ml
    sodium metaborate (anhydrous)        20 g
    water to make                        1 l

process p
    Ruff   5 min

plan one
    2026-12-03   10 films 135 through p

supplier Shop
    borax (decahydrate) 500 g 5 EUR
    sodium hydroxide 100 g 4 EUR
)")
                          .list();
    CHECK(warns(list.warnings,
                "no supplier in the workspace sells sodium metaborate; to buy: 20 g; it can be made from "
                "28.98 g borax and 6.079 g sodium hydroxide, with `by conversion` behind its line"));
}

TEST_CASE("what cannot be counted is said once") {
    const auto list = Workspace(R"(
recipe Crake
    variants   soft, normal
    capacity   10 films 135 per 1 l
    water                                             500 ml
    sodium sulfite (anhydrous)                        10 g soft, 20 g normal
    metol                                             1 g, optional "for old film"
    potassium bromide (1 % w/v in propylene glycol)   5 ml
    water to make                                     1 l

process p
    Crake   5 min

plan one
    2026-12-03   10 films 135 through p
    2026-12-04   10 films 135 through p
)")
                          .list();
    CHECK(need_of(list, "sodium sulfite").needed.exact == 20);  // 2 l of the first variant
    CHECK(shown(need_of(list, "potassium bromide").needed) == "0.1 g");
    const auto times = [&](const std::string& words) {
        return std::ranges::count_if(
            list.warnings, [&](const std::string& warning) { return warning.find(words) != std::string::npos; });
    };
    CHECK(times("metol is optional in Crake and is not counted") == 1);
    CHECK(times("Crake has variants, and soft is counted") == 1);
    CHECK(times("the propylene glycol in which potassium bromide is dissolved is not counted") == 1);
}

TEST_CASE("a solvent that fills up is bought as far as the rest leaves room") {
    const auto list = Workspace(R"(
recipe Smew
    capacity 10 films 135 per 1 l
    propylene glycol             800 ml
    propylene glycol to make     1 l

process p
    Smew   5 min

plan one
    2026-12-03   5 films 135 through p
)")
                          .list();
    CHECK(shown(need_of(list, "propylene glycol").needed) == "500 ml");
}

TEST_CASE("better water is bought where somebody sells it") {
    const std::string recipe = R"(
recipe Smew
    capacity 10 films 135 per 1 l
    water (distilled)            800 ml
    water (distilled) to make    1 l

process p
    Smew   5 min

plan one
    2026-12-03   5 films 135 through p
)";
    CHECK(Workspace(recipe).list().chemicals.empty());
    const auto list = Workspace(recipe + "\nsupplier Quay\n    water (distilled)   5 l   3.00 EUR\n").list();
    CHECK(shown(need_of(list, "water", "distilled").needed) == "500 ml");
    CHECK(need_of(list, "water", "distilled").packs.at(0).count == 1);
}

TEST_CASE("a chain of a hundred thousand recipes is followed to its end") {
    constexpr int recipes = as_many_as_sensible(100'000);
    std::string text = "recipe R0\n    water   1 l\n    metol   3 g\n    water to make   1 l\n";
    for (int i = 1; i < recipes; ++i) {
        text += "recipe R" + std::to_string(i) + "\n    R" + std::to_string(i - 1) + "   1 l\n";
        if (i + 1 == recipes) text += "    capacity   10 films 135 per 1 l\n";
    }
    text += "process p\n    R" + std::to_string(recipes - 1) + "   5 min\n";
    text += "plan one\n    2026-12-03   10 films 135 through p\n";
    const auto list = Workspace(text).list();
    CHECK(shown(need_of(list, "metol", "").needed) == "3 g");
    CHECK(list.solutions.size() == recipes);
}

}  // namespace
}  // namespace scruple::test
