// SPDX-License-Identifier: MIT
// Cards against tests/reference/worked_batches.csv and the factors beside it.
#include "plan/card_workspace.hpp"
#include "support/csv.hpp"

using namespace scruple;
using namespace scruple::test;
using check::Exact;
using plan::MakeVolume;

namespace {

/// The expected figure for `of` under the question that begins so.
double expected(const std::string& question, const std::string& of) {
    for (const Row& row : reference_rows("worked_batches.csv"))
        if (row.at("question").starts_with(question) && row.at("of") == of) return std::stod(row.at("expected"));
    FAIL("no row ", question, ", ", of);
    return 0;
}

double grams_gathered(const plan::Card& card, const std::string& chemical) {
    return gathered(card, chemical).amount.value.to_double();
}

/// The first figure in a detail that begins so: `gives off about 1.16 l of …`.
double figure_in(const std::vector<std::string>& details, const std::string& beginning) {
    for (const std::string& detail : details)
        if (detail.starts_with(beginning)) return std::stod(detail.substr(beginning.size()));
    FAIL("no detail ", beginning);
    return 0;
}

}  // namespace

TEST_CASE("a dilution of 1+3 to a litre") {
    const auto card = CardDesk(R"(
recipe Heron
    water                               500 ml
    metol                               5 g
    water to make                       1 l

recipe Tray
    dilute Heron 1+3
)")
                          .card("tray", MakeVolume{1000});
    const std::string question = "stock diluted 1+3";
    CHECK(card.work[0].amount->value.to_double() == expected(question, "stock"));
    CHECK(card.work[1].amount->value.to_double() == expected(question, "water"));
}

TEST_CASE("a litre made to two and a half US gallons") {
    const auto card = CardDesk(R"(
chemical hydroquinone
    form       powder          C6H6O2

recipe Gallons
    water                               750 ml
    sodium sulfite (anhydrous)          100 g
    hydroquinone                        5 g
    borax (decahydrate)                 2 g
    water to make                       1 l
)")
                          .card("gallons", MakeVolume{Exact(3785411784, 1000000) * Exact(5, 2)});
    const std::string question = "100 g sulfite";
    for (const char* chemical : {"sodium sulfite", "hydroquinone", "borax"})
        CHECK(grams_gathered(card, chemical) ==
              doctest::Approx(expected(question, chemical)).epsilon(0.05 / expected(question, chemical)));
}

TEST_CASE("ascorbate from ascorbic acid and bicarbonate, with the gas it gives off") {
    const std::string question = "10 g ascorbic acid";
    const auto card = CardDesk(R"(
conversion of sodium ascorbate
    reaction   ascorbic acid + sodium bicarbonate -> sodium ascorbate + water + carbon dioxide (gas)
    water                               5 ml per 1 g ascorbic acid
    ascorbic acid
    sodium bicarbonate

recipe Breaker
    water                               700 ml
    sodium ascorbate                    9.43 g, by conversion
    water to make                       1 l
)")
                          .card("breaker");
    for (const char* chemical : {"sodium bicarbonate", "ascorbic acid"})
        CHECK(grams_gathered(card, chemical) == doctest::Approx(expected(question, chemical)).epsilon(0.001));
    const auto& vessel = work_of(card, "take a vessel for the sodium ascorbate");
    CHECK(figure_in(vessel.details, "makes ") == expected(question, "sodium ascorbate"));
    CHECK(figure_in(vessel.details, "gives off about ") == expected(question, "carbon dioxide"));
}

TEST_CASE("metaborate tetrahydrate from borax and hydroxide") {
    const std::string question = "100 g borax";
    const auto card = CardDesk(R"(
chemical lake salt
    form       tetrahydrate    NaBO2·4H2O

conversion of lake salt
    reaction   borax (decahydrate) + 2 sodium hydroxide + 5 water -> 4 lake salt
    water                               1 ml per 1 g borax
    borax
    sodium hydroxide

recipe Breaker
    water                               700 ml
    lake salt                           137.9 g, by conversion
    water to make                       1 l
)")
                          .card("breaker");
    CHECK(expected(question, "sodium metaborate tetrahydrate") == 137.9);
    CHECK(grams_gathered(card, "sodium hydroxide") ==
          doctest::Approx(expected(question, "sodium hydroxide")).epsilon(0.001));
    // equivalence_factors.csv: 1 g of borax for 1.4460 g of it, with 0.210 g of hydroxide
    CHECK(grams_gathered(card, "borax") == doctest::Approx(137.9 / 1.4460).epsilon(0.001));
    CHECK(grams_gathered(card, "sodium hydroxide") / grams_gathered(card, "borax") ==
          doctest::Approx(0.210).epsilon(0.002));
}
