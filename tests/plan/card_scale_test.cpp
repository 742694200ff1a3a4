// SPDX-License-Identifier: MIT
// How much to make: by volume, by films, by what is in the jar; and when it is refused.
#include "plan/card_workspace.hpp"

using namespace scruple;
using namespace scruple::test;
using check::Exact;
using plan::MakeForUses;
using plan::MakeVolume;
using plan::MakeWith;

namespace {

const std::string twin = R"(
recipe Twin
    is a       film developer
    capacity   one-shot, 250 ml working per film 135, at least 12 ml part A per film 135

part A
    water                               700 ml
    sodium carbonate (monohydrate)      62 g
    water to make                       1 l

working
    water                               600 ml
    part A                              40 ml
    water to make                       1 l

plan Asked
    2026-12-03   6 films 135 through nothing much

process nothing much
    Twin working   5 min
)";

Exact scale(const CardDesk& desk, const plan::CardRequest& request) {
    const auto scale = plan::scale_of(desk.model(), request);
    REQUIRE(std::holds_alternative<Exact>(scale));
    return std::get<Exact>(scale);
}

std::vector<check::Use> six_films(const CardDesk& desk) {
    return desk.model().plans.front().entries.front().uses;
}

}  // namespace

TEST_CASE("a volume is a share of the batch as written, and nothing is not a volume") {
    const CardDesk desk(twin);
    CHECK(scale(desk, desk.request("twin part a", MakeVolume{250})) == Exact(1, 4));
    CHECK(scale(desk, desk.request("twin part a")) == 1);
    CHECK(desk.refusal(desk.request("twin part a", MakeVolume{0})).find("give a volume above 0 ml") !=
          std::string::npos);
}

TEST_CASE("films ask for the tank or for the floor of stock, whichever is more") {
    const CardDesk desk(twin);
    // 250 ml hold 250 × 40 / 1000 = 10 ml of part A; 12 ml are wanted, so 300 ml a film: 1800 ml, and 72 ml of part A
    CHECK(scale(desk, desk.request("twin working", MakeForUses{six_films(desk)})) == Exact(18, 10));
    CHECK(scale(desk, desk.request("twin part a", MakeForUses{six_films(desk)})) == Exact(72, 1000));
    const auto card = desk.card("twin working", MakeForUses{six_films(desk)});
    CHECK(card.makes_for == "6 films 135");
    CHECK(shown(card.makes) == "1800 ml");
    CHECK(shown(gathered(card, "Twin part A").amount) == "72 ml");
}

TEST_CASE("a recipe without a capacity cannot be sized by films") {
    const CardDesk desk(twin + R"(
recipe Silent
    water                               500 ml
    metol                               5 g
    water to make                       1 l
)");
    const std::string message = desk.refusal(desk.request("silent", MakeForUses{six_films(desk)}));
    CHECK(message.find("How much Silent 6 films 135 take is not stated") != std::string::npos);
    CHECK(message.find("Write the capacity in the recipe") != std::string::npos);
}

TEST_CASE("a jar sizes the batch, in another form by mole") {
    const CardDesk desk(twin);
    const auto carbonate = desk.chemical("sodium carbonate");
    CHECK(scale(desk, desk.request("twin part a", MakeWith{carbonate, 1, 31})) == Exact(1, 2));
    // 62 g of the monohydrate are 62 × 105.99 / 124.00 = 52.99 g of the anhydrous salt
    CHECK(scale(desk, desk.request("twin part a", MakeWith{carbonate, 0, Exact(5299, 100)})).to_double() ==
          doctest::Approx(1).epsilon(0.0005));
    const auto card = desk.card(desk.request("twin part a", MakeWith{carbonate, 0, 53}));
    CHECK(plain_blanks(card.makes_for) == "as much as 53 g sodium carbonate (anhydrous) allows");
}

TEST_CASE("a jar that the lines do not weigh from is refused") {
    const CardDesk desk(twin);
    CHECK(desk.refusal(desk.request("twin working", MakeWith{desk.chemical("sodium carbonate"), 0, 53}))
              .find("weighs out no sodium carbonate (anhydrous) of its own") != std::string::npos);
}

TEST_CASE("capacity lines say what they come to for this batch") {
    const CardDesk desk(R"(
recipe Sinker
    capacity   reused, 20 films 135 per 1 l, from "a notebook"
    water                               700 ml
    sodium thiosulfate                  200 g
    water to make                       1 l
)");
    const auto card = desk.card("sinker", MakeVolume{500});
    CHECK(says(card.capacity, "20 films 135 per 1000 ml (10 in this batch)"));
    CHECK(says(card.capacity, "from: a notebook"));
}
