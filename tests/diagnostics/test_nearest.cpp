// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>

#include "scruple/diagnostics/diagnostic.hpp"

using scruple::diagnostics::nearest;

namespace {

const std::vector<std::string_view> chemicals = {"sodium sulfite", "sodium sulfate",    "sodium sulfide",  "metol",
                                                 "hydroquinone",   "potassium bromide", "aluminum sulfate"};

}  // namespace

TEST_CASE("one slip is found: a letter changed, left out, put in, or two exchanged") {
    CHECK(nearest("netol", chemicals) == "metol");
    CHECK(nearest("metl", chemicals) == "metol");
    CHECK(nearest("mettol", chemicals) == "metol");
    CHECK(nearest("meotl", chemicals) == "metol");
}

TEST_CASE("longer words may hold more slips") {
    CHECK(nearest("hidroquinon", chemicals) == "hydroquinone");
    CHECK(nearest("potasium bormide", chemicals) == "potassium bromide");
}

TEST_CASE("nothing is proposed where nothing is near") {
    CHECK(nearest("borax", chemicals) == "");
    CHECK(nearest("water", chemicals) == "");
    CHECK(nearest("", chemicals) == "");
    CHECK(nearest("metol", {}) == "");
    CHECK(nearest("x", {"g", "l", ""}) == "");
}

TEST_CASE("British and American spellings are the same word") {
    CHECK(nearest("sodium sulphite", chemicals) == "sodium sulfite");
    CHECK(nearest("sodium sulphid", chemicals) == "sodium sulfide");
    CHECK(nearest("aluminium sulphate", chemicals) == "aluminum sulfate");
    CHECK(nearest("litre", {"metre", "liter"}) == "liter");
}

TEST_CASE("letter case is no slip, but the word itself wins") {
    CHECK(nearest("G", {"kg", "g"}) == "g");
    CHECK(nearest("Metol", chemicals) == "metol");
    CHECK(nearest("ML", {"ml", "mL"}) == "mL");
    CHECK(nearest("ml", {"mL", "ml"}) == "ml");
    CHECK(nearest("ΜL", {"μl"}) == "μl");
}

TEST_CASE("units") {
    CHECK(nearest("mim", {"min", "ml", "h", "s"}) == "min");
    CHECK(nearest("gg", {"g", "mg"}) == "");
}

TEST_CASE("the order of what is known does not count") {
    std::vector<std::string_view> known = {"bat", "cat", "rat", "car"};
    std::sort(known.begin(), known.end());
    do {
        CHECK(nearest("caz", known) == "car");
    } while (std::next_permutation(known.begin(), known.end()));
}

TEST_CASE("a hostile word costs little and is near nothing") {
    CHECK(nearest(std::string(10u << 20, 'm'), chemicals) == "");
    CHECK(nearest("\xFF\xFE\x80", chemicals) == "");
    CHECK(nearest("metol", {std::string_view("\xFF\xFF"), "metols"}) == "metols");
}
