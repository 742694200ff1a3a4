// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "scruple/text/wrap.hpp"

using scruple::text::wrapped;
using Lines = std::vector<std::string>;

TEST_CASE("words are parted at blanks, and not at no-break ones") {
    CHECK(wrapped("stir until clear", 10) == Lines{"stir until", "clear"});
    CHECK(wrapped("add 5\u00A0g now", 6) == Lines{"add", "5\u00A0g", "now"});
    CHECK(wrapped("  two   blanks ", 20) == Lines{"two blanks"});
    CHECK(wrapped("", 10) == Lines{""});
}

TEST_CASE("a word longer than the line is cut between characters") {
    CHECK(wrapped("abcdefgh", 3) == Lines{"abc", "def", "gh"});
    // Each of these is two columns wide (Unicode Standard Annex 11).
    CHECK(wrapped("薬品薬", 4) == Lines{"薬品", "薬"});
    CHECK(wrapped("薬品", 1) == Lines{"薬", "品"});
}
