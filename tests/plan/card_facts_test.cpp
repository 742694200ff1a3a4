// SPDX-License-Identifier: MIT
// Cautions, hazards, keeping times and contents of a card.
#include <algorithm>

#include "plan/card_workspace.hpp"
#include "scruple/plan/calendar.hpp"

using namespace scruple;
using namespace scruple::test;

namespace {

const std::string shoal = R"(
recipe Shoal
    is a       toner
    caution    "Window open."

part A
    keeps      6 months full, 10 days half full
    caution    "Gloves."
    water                               700 ml
    benzotriazole                       1 g
    water to make                       1 l

working
    use within 2 h
    water                               500 ml
    part A                              100 ml
    sodium thiosulfate                  10 g
    water to make                       1 l
    expect pH 7 to 7.5
)";

std::vector<std::string> texts(const plan::Card& card) {
    std::vector<std::string> all;
    for (const auto& caution : card.cautions) all.push_back(caution.text);
    return all;
}

check::Day day(const std::string& text) {
    for (check::Day day = 20000; day < 22000; ++day)
        if (plan::day_text(day) == text) return day;
    FAIL("no day ", text);
    return 0;
}

}  // namespace

TEST_CASE("cautions come through the parts, each once, with their source") {
    const auto card = CardDesk(shoal).card("shoal working");
    for (const char* text : {"Window open.", "Gloves.", "Dust: no draught."}) {
        const auto all = texts(card);
        CHECK_MESSAGE(std::ranges::count(all, text) == 1, text);
    }
    const auto dust = std::ranges::find(card.cautions, "Dust: no draught.", &plan::Caution::text);
    CHECK(dust->source == "benzotriazole, your own entry");
    CHECK(std::ranges::find(card.cautions, "Gloves.", &plan::Caution::text)->source == "the recipe");
}

TEST_CASE("every card defers to the data sheet and to local rules, and gives no first aid") {
    const auto all = texts(CardDesk(shoal).card("shoal part a"));
    CHECK(all.front().find("safety data sheet") != std::string::npos);
    CHECK(says(all, "Local rules decide what may go down a drain"));
    CHECK(says(all, "No first-aid advice"));
    CHECK_FALSE(says(all, "silver"));
    for (const std::string word : {"harmless", "non-toxic", "is safe"}) CHECK_FALSE(says(all, word));
}

TEST_CASE("thiosulfate brings the word about silver") {
    CHECK(says(texts(CardDesk(shoal).card("shoal working")), "Used fixer contains silver"));
}

TEST_CASE("a hazard row for each chemical, empty where none is recorded") {
    const auto card = CardDesk(shoal).card("shoal working");
    REQUIRE(card.hazards.size() == 2);
    const auto row = std::ranges::find(card.hazards, "benzotriazole", &plan::HazardRow::chemical);
    REQUIRE(row != card.hazards.end());
    CHECK(row->codes == std::vector<std::string>{"H302", "H319"});
    CHECK(row->source == "an invented sheet");
    CHECK(std::ranges::find(card.hazards, "sodium thiosulfate", &plan::HazardRow::chemical)->codes.empty());
}

TEST_CASE("contents come through the parts and do not change with the batch") {
    const CardDesk desk(shoal);
    for (const auto& card : {desk.card("shoal working"), desk.card("shoal working", plan::MakeVolume{300})}) {
        const auto row = std::ranges::find(card.contents, "benzotriazole", &plan::ContentRow::chemical);
        REQUIRE(row != card.contents.end());
        CHECK(row->g_per_l == doctest::Approx(0.1));                             // 1 g/l × 100 ml in a litre
        CHECK(row->mol_per_l == doctest::Approx(0.1 / 119.127).epsilon(0.001));  // C6H5N3
    }
}

TEST_CASE("use-by days follow the calendar from the day of mixing") {
    const CardDesk desk(shoal);
    auto request = desk.request("shoal part a");
    request.mixed_on = day("2026-08-31");
    const auto card = desk.card(request);
    REQUIRE(card.keeps.size() == 2);
    CHECK(plain_blanks(card.keeps[0].text) == "6 months full");
    CHECK(plan::day_text(*card.keeps[0].use_by) == "2027-02-28");  // no 31 February
    CHECK(plan::day_text(*card.keeps[1].use_by) == "2026-09-10");
    CHECK(desk.card("shoal part a").keeps[0].use_by == std::nullopt);
}

TEST_CASE("the facts of a working solution are its own") {
    const auto card = CardDesk(shoal).card("shoal working");
    CHECK(card.use_within == "2 h");
    REQUIRE(card.checks.size() == 1);
    CHECK(plain_blanks(card.checks[0]) == "pH 7 to 7.5");
    CHECK(card.section == "working");
    CHECK(card.strength == "working");
}
