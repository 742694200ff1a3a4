// SPDX-License-Identifier: MIT
#include "golden.hpp"
#include "samples.hpp"
#include "scruple/diagnostics/show.hpp"

using namespace scruple;

TEST_CASE("a card reads as it was found good") {
    const plan::Card cards[] = {samples::part_a(), samples::bare()};
    check_against_golden("card.txt", emit::card_text(cards[0], {}));
    check_against_golden("card-narrow.txt", emit::card_text(cards[0], {48}));
    check_against_golden("card-bare.txt", emit::card_text(cards[1], {}));
    check_against_golden("card.html", emit::card_html({cards, 1}));
    check_against_golden("cards.html", emit::card_html(cards));
    check_against_golden("card.json", emit::card_json({cards, 1}));
    check_against_golden("cards.json", emit::card_json(cards));
}

TEST_CASE("a hostile card stays words in every back end") {
    const plan::Card cards[] = {samples::hostile()};
    check_against_golden("card-hostile.txt", emit::card_text(cards[0], {}));
    check_against_golden("card-hostile.html", emit::card_html(cards));
    check_against_golden("card-hostile.json", emit::card_json(cards));
}

TEST_CASE("a shopping list reads as it was found good") {
    const plan::ShoppingList list = samples::december();
    check_against_golden("shopping.txt", emit::shopping_text(list, {}));
    check_against_golden("shopping.html", emit::shopping_html(list));
    check_against_golden("shopping.json", emit::shopping_json(list));
}

TEST_CASE("a shelf reads as it was found good") {
    const plan::StockSheet shelf = samples::shelf();
    check_against_golden("shelf.txt", emit::shelf_text(shelf, {}));
    check_against_golden("shelf.html", emit::shelf_html(shelf));
    check_against_golden("shelf.json", emit::shelf_json(shelf));
}

TEST_CASE("a line written into the log reads as it was found good") {
    const plan::StockEntry line = samples::log_line();
    check_against_golden("log.txt", emit::entry_text(line, {}));
    check_against_golden("log.html", emit::entry_html(line));
    check_against_golden("log.json", emit::entry_json(line));
}

TEST_CASE("a chemical reads as it was found good") {
    const check::Chemical it = samples::carbonate();
    check_against_golden("chemical.txt", emit::chemical_text(it, {}));
    check_against_golden("chemical.html", emit::chemical_html(it));
    check_against_golden("chemical.json", emit::chemical_json(it));
}

TEST_CASE("one form for another reads as it was found good") {
    const auto weighings = samples::weighings();
    check_against_golden("weigh.txt", emit::weigh_text(weighings, {}));
    check_against_golden("weigh.html", emit::weigh_html(weighings));
    check_against_golden("weigh.json", emit::weigh_json(weighings));
}

TEST_CASE("a reaction reads as it was found good") {
    const plan::Reacted reacted = samples::reacted();
    check_against_golden("react.txt", emit::react_text(reacted, {}));
    check_against_golden("react.html", emit::react_html(reacted));
    check_against_golden("react.json", emit::react_json(reacted));
}

TEST_CASE("the contents of solutions read as they were found good") {
    const auto sheets = samples::contents();
    check_against_golden("contents.txt", emit::contents_text(sheets, {}));
    check_against_golden("contents.html", emit::contents_html(sheets));
    check_against_golden("contents.json", emit::contents_json(sheets));
}

TEST_CASE("a derivation reads as it was found good") {
    const auto whys = samples::whys();
    check_against_golden("why.txt", emit::why_text(whys, {}));
    check_against_golden("why.html", emit::why_html(whys));
    check_against_golden("why.json", emit::why_json(whys));
}

TEST_CASE("what a check finds is a document of its schema too") {
    const text::Source sources[] = {{"bench/lantern.scruple", "recipe Lantern\n    water 1:9\n"}};
    const auto kind = diagnostics::all_kinds().front().kind;
    const diagnostics::Diagnostic found[] = {diagnostics::make(kind, 0, {25, 28}), diagnostics::make(kind, 7, {0, 0})};
    check_against_golden("check.json", diagnostics::as_json(found, sources));
}
