// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <sstream>

#include "samples.hpp"
#include "scruple/text/source.hpp"

using namespace scruple;

namespace {

std::size_t widest_line(const std::string& said) {
    std::size_t widest = 0;
    std::istringstream lines(said);
    for (std::string line; std::getline(lines, line);) widest = std::max(widest, text::display_width(line));
    return widest;
}

bool has_control(const std::string& said) {
    for (const char c : said)
        if ((static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7F) return true;
    return false;
}

}  // namespace

TEST_CASE("no line passes the width that was asked for, or 80") {
    for (const std::size_t width : {44, 48, 60, 72, 80}) {
        CAPTURE(width);
        CHECK(widest_line(emit::card_text(samples::part_a(), {width})) <= width);
        CHECK(widest_line(emit::card_text(samples::hostile(), {width})) <= width);
        CHECK(widest_line(emit::shopping_text(samples::december(), {width})) <= width);
        CHECK(widest_line(emit::shelf_text(samples::shelf(), {width})) <= width);
        CHECK(widest_line(emit::entry_text(samples::log_line(), {width})) <= width);
        CHECK(widest_line(emit::chemical_text(samples::carbonate(), {width})) <= width);
    }
    CHECK(widest_line(emit::card_text(samples::part_a(), {200})) <= 80);
}

TEST_CASE("a name in a wide script is measured as a terminal shows it") {
    plan::Card card = samples::bare();
    card.recipe = "現像液";
    for (int i = 0; i < 5; ++i) card.recipe += card.recipe;
    CHECK(widest_line(emit::card_text(card, {60})) <= 60);
}

TEST_CASE("a number and its unit stand on one line at every width") {
    for (std::size_t width = 40; width <= 80; ++width) {
        CAPTURE(width);
        std::istringstream lines(emit::card_text(samples::part_a(), {width}));
        std::string before;
        for (std::string line; std::getline(lines, line); before = line) {
            const std::string first = line.substr(0, line.find(' ', line.find_first_not_of(' ')));
            const bool begins_with_unit = first.ends_with(" ml") || first.ends_with(" g") || first.ends_with("°C");
            const bool parted = begins_with_unit && !before.empty() && std::isdigit(before.back()) != 0;
            CHECK_FALSE(parted);
        }
    }
}

TEST_CASE("nothing in a text acts on a terminal") {
    CHECK_FALSE(has_control(emit::card_text(samples::hostile(), {})));
}

TEST_CASE("a word of a megabyte is cut, and soon") {
    plan::Card card = samples::bare();
    card.recipe.assign(1 << 20, 'x');
    CHECK(widest_line(emit::card_text(card, {})) <= 80);
}

TEST_CASE("what no caution is recorded for says so, and never that there is none to take") {
    const plan::Card card = samples::part_a();
    const std::string texts[] = {emit::card_text(card, {}), emit::card_html({&card, 1}), emit::card_json({&card, 1})};
    for (const std::string& said : texts) {
        CHECK(said.find("no caution recorded") != std::string::npos);
        CHECK(said.find("safety data sheet") != std::string::npos);
        for (const char* word : {"harmless", "non-toxic", "is safe"}) CHECK(said.find(word) == std::string::npos);
    }
}

TEST_CASE("a tally is for what is used again") {
    plan::Card card = samples::part_a();
    CHECK(emit::card_text(card, {}).find("One box for each") != std::string::npos);
    card.capacity = {"one-shot"};
    CHECK(emit::card_text(card, {}).find("One box for each") == std::string::npos);
}
