// SPDX-License-Identifier: MIT
// Packs, suppliers, postage, forms as sold. Recipes, prices and amounts are invented; each sum is written out.
#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

using check::Exact;

/// A bath that takes 100 g of sulfite for every litre, and so for every 10 films.
std::string sulfite_for(const std::string& films, const std::string& suppliers) {
    return R"(
recipe Plover
    capacity 10 films 135 per 1 l
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

process p
    Plover   5 min

plan one
    2026-12-03   )" +
           films + " films 135 through p\n" + suppliers;
}

TEST_CASE("the cheapest packs of one size are bought") {
    const std::string prices = R"(
supplier Quay
    sodium sulfite (anhydrous)   100 g   3.00 EUR
    sodium sulfite (anhydrous)   1 kg   11.00 EUR
)";
    const Workspace little(sulfite_for("30", prices));  // 300 g: 3 × 3.00 = 9.00 against 11.00
    const auto small = need_of(little.list(), "sodium sulfite");
    CHECK(small.packs.at(0).count == 3);
    CHECK(small.packs.at(0).pack == "100 g");
    CHECK(small.cost == 9);
    CHECK(small.left_over.exact == 0);
    const Workspace much(sulfite_for("40", prices));  // 400 g: 4 × 3.00 = 12.00 against 11.00
    const auto large = need_of(much.list(), "sodium sulfite");
    CHECK(large.packs.at(0).count == 1);
    CHECK(large.packs.at(0).pack == "1 kg");
    CHECK(large.cost == 11);
    CHECK(large.left_over.exact == 600);
}

TEST_CASE("for more than can be counted in packs the list says so, and names none") {
    const Workspace workspace(
        sulfite_for("9223372036854775807", "supplier Quay\n    sodium sulfite (anhydrous)   100 g   3.00 EUR\n"));
    const auto list = workspace.list();
    CHECK(need_of(list, "sodium sulfite").packs.empty());
    const auto warning = "more is to be bought than can be counted in packs, and so no packs are named";
    CHECK(std::ranges::count(list.warnings, warning) == 1);
}

TEST_CASE("at the same cost the pack that leaves less is bought, then the supplier that comes first by name") {
    const auto supplier_of = [](const std::string& prices) {
        return need_of(Workspace(sulfite_for("25", prices)).list(), "sodium sulfite").packs.at(0).supplier;
    };
    CHECK(supplier_of("supplier Quay\n    sodium sulfite (anhydrous)   500 g   6.00 EUR\n"
                      "supplier Wharf\n    sodium sulfite (anhydrous)   300 g   6.00 EUR\n") == "Wharf");
    CHECK(supplier_of("supplier Wharf\n    sodium sulfite (anhydrous)   500 g   6.00 EUR\n"
                      "supplier Quay\n    sodium sulfite (anhydrous)   500 g   6.00 EUR\n") == "Quay");
}

TEST_CASE("packs in avoirdupois ounces are counted in grams") {
    // 4 oz av are 113.398 g: 300 g take three of them, 340.194 g (the ounce as in the international pound of 1959).
    const Workspace workspace(
        sulfite_for("30", "supplier Quay\n    sodium sulfite (anhydrous)   4 oz av   2.50 EUR\n"));
    const auto list = workspace.list();
    const auto& need = need_of(list, "sodium sulfite");
    CHECK(need.packs.at(0).count == 3);
    CHECK(need.cost == Exact(15, 2));
    CHECK(shown(need.left_over) == "40.1 g");  // 40.194… rounded down
}

TEST_CASE("postage is paid once a supplier, and not at all from the sum that frees it") {
    const std::string two = R"(
recipe Plover
    capacity 10 films 135 per 1 l
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    metol                        10 g
    water to make                1 l

process p
    Plover   5 min

plan one
    2026-12-03   10 films 135 through p

supplier Quay
    postage    6.50 EUR, none over 20 EUR
    sodium sulfite (anhydrous)   100 g   8.00 EUR
    metol                        10 g   )";
    const auto below = Workspace(two + "11.99 EUR\n").list();
    REQUIRE(below.postage.size() == 1);
    CHECK(below.postage[0].supplier == "Quay");
    REQUIRE(below.totals.size() == 1);
    CHECK(below.totals[0].first == "EUR");
    CHECK(below.totals[0].second == Exact(2649, 100));  // 8.00 + 11.99 + 6.50
    const auto reached = Workspace(two + "12.00 EUR\n").list();
    CHECK(reached.postage.empty());
    CHECK(reached.totals.at(0).second == 20);
}

TEST_CASE("a sum in one currency frees no postage in another") {
    const auto list = Workspace(sulfite_for("10",
                                            "supplier Quay\n    postage 5.00 EUR, none over 6 CHF\n"
                                            "    sodium sulfite (anhydrous)   100 g   8.00 EUR\n"))
                          .list();
    REQUIRE(list.postage.size() == 1);
    CHECK(list.totals.at(0).second == 13);
}

TEST_CASE("two currencies are summed apart") {
    const auto list = Workspace(sulfite_for("10",
                                            "supplier Quay\n    postage 5.00 EUR\n"
                                            "    sodium sulfite (anhydrous)   100 g   8.00 CHF\n"
                                            "supplier Wharf\n    metol   10 g   1.00 EUR\n"))
                          .list();
    REQUIRE(list.totals.size() == 2);
    CHECK(list.totals[0] == std::pair<std::string, Exact>("CHF", 8));
    CHECK(list.totals[1] == std::pair<std::string, Exact>("EUR", 5));
    CHECK(warns(list.warnings, "prices in CHF and EUR are not compared"));
}

std::string two_carbonates(const std::string& prices) {
    return R"(
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

supplier Quay
)" + prices;
}

TEST_CASE("a form that nobody sells is bought as another one, out of the same pack as that") {
    const auto list = Workspace(two_carbonates("    sodium carbonate (monohydrate)   60 g   4.00 EUR\n")).list();
    const auto& asked = need_of(list, "sodium carbonate", "anhydrous");
    const auto& sold = need_of(list, "sodium carbonate", "monohydrate");
    // 50 g anhydrous are 50 × 124.003 / 105.988 = 58.499 g monohydrate; with the other 50 g, 108.499 g: two packs.
    CHECK(asked.buy_form == "monohydrate");
    CHECK(asked.to_buy_as.exact == Exact(50) * Exact(124003, 1000) / Exact(105988, 1000));
    CHECK(asked.packs.empty());
    CHECK(asked.along_with == "sodium carbonate (monohydrate)");
    CHECK(asked.because.back() == "bought together with sodium carbonate (monohydrate)");
    CHECK(sold.packs.at(0).count == 2);
    CHECK(sold.cost == 8);
    CHECK(shown(sold.left_over) == "11.5 g");  // 120 - 108.499 = 11.501
    CHECK(list.totals.at(0).second == 8);
}

TEST_CASE("the form that is asked for is bought, were another one cheaper") {
    const auto list = Workspace(two_carbonates("    sodium carbonate (monohydrate)   500 g   1.00 EUR\n"
                                               "    sodium carbonate (anhydrous)     100 g   9.00 EUR\n"))
                          .list();
    CHECK(need_of(list, "sodium carbonate", "anhydrous").buy_form.empty());
    CHECK(need_of(list, "sodium carbonate", "anhydrous").cost == 9);
    CHECK(need_of(list, "sodium carbonate", "monohydrate").cost == 1);
}

std::string fixer(const std::string& rest) {
    return R"(
recipe Knot
    capacity 10 films 135 per 1 l
    water                                  500 ml
    acetic acid (28 % v/v)                 50 ml
    ammonium thiosulfate (60 % w/w)        200 ml
    potassium bromide (10 % w/v)           20 ml
    water to make                          1 l

process p
    Knot   5 min

plan one
    2026-12-03   20 films 135 through p

)" + rest;
}

TEST_CASE("a solution that is sold as such is bought by volume, one that is not as what is in it") {
    const auto list = Workspace(fixer("supplier Quay\n"
                                      "    acetic acid (glacial)             500 ml   9.00 EUR\n"
                                      "    ammonium thiosulfate (60 % w/w)   1 l     11.00 EUR\n"
                                      "    potassium bromide                 100 g    8.00 EUR\n"))
                          .list();
    // Two litres: 400 ml of thiosulfate, 100 ml of 28 % acid (28 ml glacial), 40 ml of 10 % bromide (4 g).
    const auto& liquid = need_of(list, "ammonium thiosulfate", "60 % w/w");
    CHECK(shown(liquid.needed) == "400 ml");
    CHECK(liquid.packs.at(0).count == 1);
    CHECK(shown(liquid.left_over) == "600 ml");
    CHECK(shown(need_of(list, "acetic acid").needed) == "28 ml");
    CHECK(shown(need_of(list, "acetic acid").left_over) == "472 ml");
    CHECK(shown(need_of(list, "potassium bromide").needed) == "4 g");
    CHECK(list.totals.at(0).second == 28);
}

TEST_CASE("a liquid in packs by weight is counted by its density") {
    // 400 ml at 1.25 g/ml are 500 g: one pack of 500 g, nothing left.
    const auto list =
        Workspace(fixer("supplier Quay\n    ammonium thiosulfate (60 % w/w)   500 g   6.00 EUR\n")).list();
    CHECK(need_of(list, "ammonium thiosulfate", "60 % w/w").packs.at(0).count == 1);
    CHECK(need_of(list, "ammonium thiosulfate", "60 % w/w").left_over.exact == 0);
}

TEST_CASE("a salt does for a solution that is on the shelf") {
    const auto list = Workspace(fixer("log\n    2026-11-01 on shelf   potassium bromide (10 % w/v) 30 ml\n"
                                      "    2026-11-01 on shelf   potassium bromide 0.5 g\n"
                                      "supplier Quay\n    potassium bromide   100 g   8.00 EUR\n"))
                          .list();
    const auto& need = need_of(list, "potassium bromide", "10 % w/v");
    CHECK(shown(need.needed) == "40 ml");
    CHECK(shown(need.on_hand) == "35 ml");  // 30 ml, and 0.5 g that make 5 ml
    CHECK(shown(need.to_buy) == "5 ml");
    CHECK(shown(need.to_buy_as) == "0.5 g");
    CHECK(need.buy_form == "crystals");
    CHECK(shown(need.left_over) == "99.5 g");
}

TEST_CASE("a solution does not do for the salt, nor a weak one for a strong one; a strong one does for a weak one") {
    const auto on_hand = [](const std::string& strength) {
        const auto list = Workspace(R"(
recipe Knot
    capacity 10 films 135 per 1 l
    water                           500 ml
    potassium bromide               3 g
    potassium bromide (5 % w/v)     20 ml
    water to make                   1 l

process p
    Knot   5 min

plan one
    2026-12-03   10 films 135 through p

log
    2026-11-01 on shelf   potassium bromide (5 % w/v) 1 ml
    2026-11-01 on shelf   potassium bromide ()" +
                                    strength + R"( % w/v) 4 ml
)")
                              .list();
        CHECK(shown(need_of(list, "potassium bromide").on_hand) == "0 g");
        return shown(need_of(list, "potassium bromide", "5 % w/v").on_hand);
    };
    CHECK(on_hand("2") == "1 ml");
    CHECK(on_hand("10") == "9 ml");  // 4 ml of 10 % hold as much as 8 ml of 5 %
}

TEST_CASE("packs of two sizes and two suppliers, whatever the whole list costs the least with; and the next best") {
    // 60 films, 600 g. Quay alone: 1 kg 13 + 5 = 18, or 500 g + 100 g 7 + 3 + 5 = 15. Wharf's 100 g at 2 costs 4 more.
    const auto list = Workspace(sulfite_for("60",
                                            "supplier Quay\n    postage 5.00 EUR\n"
                                            "    sodium sulfite (anhydrous)   1 kg    13.00 EUR\n"
                                            "    sodium sulfite (anhydrous)   500 g    7.00 EUR\n"
                                            "    sodium sulfite (anhydrous)   100 g    3.00 EUR\n"
                                            "supplier Wharf\n    postage 5.00 EUR\n"
                                            "    sodium sulfite (anhydrous)   100 g    2.00 EUR\n"))
                          .list();
    const auto& need = need_of(list, "sodium sulfite");
    REQUIRE(need.packs.size() == 2);
    CHECK(need.packs[0].pack == "500 g");
    CHECK(need.packs[1].pack == "100 g");
    CHECK(list.totals.at(0).second == 15);
    REQUIRE(need.next_best.has_value());
    CHECK(need.next_best->packs.at(0).supplier == "Wharf");  // 6 × 2 + 5 = 17
    CHECK(need.next_best->packs.at(0).count == 6);
    CHECK(need.next_best->more == 2);
    CHECK_FALSE(need.filled_up);
}

TEST_CASE("a pack more than is needed is bought where the postage that it saves is dearer") {
    const auto list = Workspace(sulfite_for("10",
                                            "supplier Quay\n    postage 5.00 EUR, none over 8 EUR\n"
                                            "    sodium sulfite (anhydrous)   100 g   4.00 EUR\n"))
                          .list();
    CHECK(need_of(list, "sodium sulfite").packs.at(0).count == 2);
    CHECK(need_of(list, "sodium sulfite").filled_up);
    CHECK(list.postage.empty());
    CHECK(list.totals.at(0).second == 8);
}

TEST_CASE("of two currencies the one that the workspace names first is paid") {
    const auto list = Workspace(sulfite_for("10",
                                            "supplier Quay\n    sodium sulfite (anhydrous)   100 g   8.00 EUR\n"
                                            "supplier Wharf\n    sodium sulfite (anhydrous)   100 g   1.00 CHF\n"))
                          .list();
    CHECK(need_of(list, "sodium sulfite").packs.at(0).supplier == "Quay");
}

}  // namespace
}  // namespace scruple::test
