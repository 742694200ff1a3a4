// SPDX-License-Identifier: MIT
// A chemical made by a conversion, on the card of the recipe that uses it.
#include "plan/card_workspace.hpp"

using namespace scruple;
using namespace scruple::test;
using plan::MakeVolume;
using plan::MakeWith;
using Do = plan::Work::Do;

namespace {

const std::string ascorbate = R"(
conversion of sodium ascorbate
    reaction   ascorbic acid + sodium bicarbonate -> sodium ascorbate + water + carbon dioxide (gas)
    vessel     3 times the volume
    caution    "It foams."
    water                               5 ml at 25 C per 1 g ascorbic acid
    ascorbic acid
    stir until clear
    sodium bicarbonate
    wait 30 min, stirring every 5 min
)";

const std::string metaborate = R"(
conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    excess     sodium hydroxide, 2 % more than it needs
    water                               12 ml at 25 C per 1 g borax (decahydrate)
    borax (decahydrate)
    sodium hydroxide
)";

std::string recipe_making(const std::string& water, const std::string& product) {
    return "\nrecipe Breaker\n    water " + water + "\n    sodium sulfite (anhydrous) 40 g\n    " + product +
           ", by conversion\n    water to make 1 l\n";
}

}  // namespace

TEST_CASE("the reagents go into a vessel of their own, with water taken from the recipe's") {
    const auto card =
        CardDesk(metaborate + recipe_making("700 ml", "sodium metaborate 20 g")).card("breaker", MakeVolume{500});
    // 10 g NaBO2 (65.80 g/mol) = 0.15198 mol; borax a quarter: 0.037994 mol × 381.36 = 14.49 g;
    // NaOH a half and 2 %: 0.075988 × 39.997 × 1.02 = 3.100 g; water 12 × 14.49 = 173.9 ml, so 350 - 173.9 = 176.1 ml
    // stay.
    CHECK(gathered(card, "borax").amount.value.to_double() == doctest::Approx(14.49).epsilon(0.001));
    CHECK(gathered(card, "sodium hydroxide").amount.value.to_double() == doctest::Approx(3.100).epsilon(0.001));
    REQUIRE(card.work.size() == 8);
    CHECK(card.work[0].amount->value.to_double() == doctest::Approx(176.1).epsilon(0.001));
    CHECK(card.work[2].what_to_do == Do::open_vessel);
    CHECK(card.work[3].what_to_do == Do::water);
    CHECK(card.work[3].vessel == "sodium metaborate");
    CHECK(card.work[3].amount->value.to_double() == doctest::Approx(173.9).epsilon(0.001));
    CHECK(plain_blanks(card.work[3].at) == "25 °C");
    CHECK(card.work[6].what_to_do == Do::pour_in);
    CHECK(card.work[6].vessel == "");
    for (const auto& row : card.gather) CHECK(row.chemical != "sodium metaborate");
}

TEST_CASE("by-products and the excess are in the contents") {
    const auto card = CardDesk(metaborate + recipe_making("700 ml", "sodium metaborate 20 g")).card("breaker");
    double hydroxide = 0;
    double product = 0;
    for (const auto& row : card.contents) {
        if (row.chemical == "sodium hydroxide") hydroxide = row.g_per_l;
        if (row.chemical == "sodium metaborate") product = row.g_per_l;
    }
    CHECK(product == doctest::Approx(20));
    CHECK(hydroxide == doctest::Approx(6.0783 * 0.02).epsilon(0.001));  // 2 % of 0.15198 mol × 39.997 g/mol
}

TEST_CASE("a vessel that fizzes has room: its water, its salts, times three") {
    const auto card = CardDesk(ascorbate + recipe_making("700 ml", "sodium ascorbate 9.43 g")).card("breaker");
    // 5 × 8.384 g = 41.9 ml of water, 0.75 × (8.384 + 3.999) = 9.3 ml of salts, three times: 153.6, up to 154
    CHECK(says(work_of(card, "take a vessel for the sodium ascorbate").details,
               "an open vessel that holds at least 154 ml"));
}

TEST_CASE("too little water before the product is refused with what is needed") {
    const CardDesk desk(metaborate + "\nrecipe Breaker\n    water 300 ml\n    sodium metaborate 20 g, by conversion\n");
    // 20 g: borax 28.98 g, water 347.8 ml
    const std::string message = desk.refusal(desk.request("breaker"));
    CHECK(message.find("takes 347.8 ml of water, and the water before it can give only 300 ml") != std::string::npos);
    CHECK(message.find("Write at least 48 ml more there") != std::string::npos);
}

TEST_CASE("what does not fit under the mark is refused with the smallest volume that would do") {
    const CardDesk desk(metaborate + recipe_making("700 ml", "sodium metaborate 60 g"));
    // 60 g: water 1043.3 ml. 350 ml of the 700 ml can go, and 1000 - 700 - 30 - 45 = 225 ml are free (40 g of sulfite
    // and 60 g of metaborate, no ions in these tests, at 0.75 ml a gram): 468.3 ml are wanting.
    const std::string message = desk.refusal(desk.request("breaker"));
    CHECK(message.find("takes 1043 ml of water, 468.3 ml more than the 1000 ml of the recipe have room for") !=
          std::string::npos);
    CHECK(message.find("needs a recipe that makes at least 1469 ml") != std::string::npos);
}

TEST_CASE("the jar of a reagent sizes the batch") {
    const CardDesk desk(ascorbate + recipe_making("700 ml", "sodium ascorbate 9.43 g"));
    // the batch as written takes 3.999 g of bicarbonate, so 12 g make three of it
    const auto card = desk.card(desk.request("breaker", MakeWith{desk.chemical("sodium bicarbonate"), 0, 12}));
    CHECK(card.makes.value.to_double() == doctest::Approx(3000).epsilon(0.001));
    CHECK(plain_blanks(card.makes_for) == "as much as 12 g sodium bicarbonate allows");
}

TEST_CASE("the cautions of a conversion are on the card") {
    const auto card = CardDesk(ascorbate + recipe_making("700 ml", "sodium ascorbate 9.43 g")).card("breaker");
    bool foams = false;
    for (const auto& caution : card.cautions)
        if (caution.text == "It foams.") foams = caution.source == "conversion of sodium ascorbate";
    CHECK(foams);
}

TEST_CASE("of two ways to make it the first is taken, and the card says which") {
    const auto card = CardDesk(metaborate + R"(
chemical boric acid
    form       powder          H3BO3

conversion of sodium metaborate (anhydrous)
    reaction   boric acid + sodium hydroxide -> sodium metaborate (anhydrous) + 2 water
    water                               5 ml per 1 g boric acid
    boric acid
    sodium hydroxide
)" + recipe_making("700 ml", "sodium metaborate 20 g"))
                          .card("breaker");
    REQUIRE(card.substituted.size() == 1);
    CHECK(says({card.substituted[0].taken}, "made from 28.98 g borax and 6.2 g sodium hydroxide"));
    CHECK(says(card.substituted[0].others, "made from 18.79 g boric acid and 12.16 g sodium hydroxide"));
}

TEST_CASE("contents count the leftovers of a conversion through the parts") {
    const auto card = CardDesk(metaborate + recipe_making("700 ml", "sodium metaborate 20 g") + R"(
recipe Tray
    dilute Breaker 1+3
)")
                          .card("tray");
    for (const auto& row : card.contents)
        if (row.chemical == "sodium hydroxide") CHECK(row.g_per_l == doctest::Approx(6.0783 * 0.02 / 4).epsilon(0.001));
    CHECK(card.contents.size() == 3);
}
