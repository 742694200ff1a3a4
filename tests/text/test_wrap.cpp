// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "scruple/text/wrap.hpp"

using scruple::text::wrapped;
using Pieces = std::vector<std::string>;

TEST_CASE("words are parted at blanks, and not at no-break ones") {
    CHECK(wrapped("stir until clear", 10) == Pieces{"stir until", "clear"});
    CHECK(wrapped("add 5\u00A0g now", 6) == Pieces{"add", "5\u00A0g", "now"});
    CHECK(wrapped("  two   blanks ", 20) == Pieces{"two blanks"});
    CHECK(wrapped("", 10) == Pieces{""});
}

TEST_CASE("a word longer than the line is cut between characters") {
    CHECK(wrapped("abcdefgh", 3) == Pieces{"abc", "def", "gh"});
    // Each of these is two columns wide (Unicode Standard Annex 11).
    CHECK(wrapped("薬品薬", 4) == Pieces{"薬品", "薬"});
    CHECK(wrapped("薬品", 1) == Pieces{"薬", "品"});
}
