// SPDX-License-Identifier: MIT
// Columns in which some lines have nothing, and what is settled for one column or one chemical. Pages are invented;
// what they come to was worked out with GNU units 2.22 (`units "20 grain / 20 brfloz" g/l`).
#include <cmath>

#include "page_workspace.hpp"

using scruple::test::PrintedPage;
using scruple::test::to_figures;
using Verdict = scruple::printed::Verdict;

TEST_CASE("a dash is an amount that a column does not have") {
    for (const std::string dash : {"-", "–", "—", "--", "nil"}) {
        CAPTURE(dash);
        const PrintedPage page("    book A Primer, London, 1903\n    | Metol | 20 grs | 2.3 g\n    | Borax | " + dash +
                               " | 5 g\n    | Hypo | 1 oz | " + dash + "\n    | Water to | 20 oz | 1000 c.c.\n");
        CHECK(page.per_litre("metol") == to_figures(2.281));
        CHECK(page.per_litre("borax") == to_figures(5));
        // 5 g/l in 20 fluid ounces of 28.4131 ml
        CHECK(std::stod(page.line("borax").amount) == to_figures(2.841));
        CHECK(page.line("borax").off.empty());
        CHECK(page.per_litre("sodium thiosulfate") == to_figures(49.89));
        for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
    }
}

TEST_CASE("a dash that leads to the only figures is none") {
    const PrintedPage page("    | Metol  -  2 g\n    | Borax  —  5 g\n    | Water to  —  1 l\n");
    CHECK(page.per_litre("metol") == to_figures(2));
    CHECK(page.per_litre("borax") == to_figures(5));
}

TEST_CASE("a reading by hand of one column leaves the others") {
    const std::string page =
        "    | Metol | 20 grs | 20 grs\n    | Hypo | 1 oz | 1 oz\n    | Water to | 20 fl oz | 20 fl oz\n";
    const auto taken = [&](const std::string& hand, const std::string& column) {
        return PrintedPage(page + hand).taken("whose fluid ounce in column " + column);
    };
    const std::string us_in_second = "    reading fl oz us in column 2 because \"it is headed so\"\n";
    const std::string uk_in_first = "    reading fl oz imperial in column 1 because \"it is headed so\"\n";
    CHECK(taken(us_in_second + uk_in_first, "1") == "fl oz imperial");
    CHECK(taken(us_in_second + uk_in_first, "2") == "fl oz us");
    const PrintedPage second(page + us_in_second);
    CHECK(second.question("whose fluid ounce in column 2").verdict == Verdict::by_hand);
    CHECK(second.question("whose fluid ounce in column 1").verdict != Verdict::by_hand);
    CHECK(second.question("whose fluid ounce in column 1").settle_with.find(" in column 1 because") !=
          std::string::npos);
    const PrintedPage both(page + "    reading fl oz us because \"so\"\n");
    CHECK(both.question("whose fluid ounce in column 1").verdict == Verdict::by_hand);
    CHECK(both.question("whose fluid ounce in column 2").verdict == Verdict::by_hand);
}

TEST_CASE("a reading by hand of one chemical leaves the others") {
    const std::string page =
        "    book A Primer, London, 1903\n    | Hypo   1 oz\n    | Borax   1 oz\n    | Acetic acid 28 %   1 fl oz\n"
        "    | Formalin 40 %   1 fl oz\n    | Water to   20 fl oz\n";
    const PrintedPage ounce(page + "    reading oz apothecaries of borax because \"bought of a druggist\"\n");
    // `units "1 oz / 20 brfloz" g/l`, `units "1 troyounce / 20 brfloz" g/l`
    CHECK(ounce.per_litre("sodium thiosulfate") == to_figures(49.89));
    CHECK(ounce.per_litre("borax") == to_figures(54.74));
    CHECK(ounce.question("whose ounce for borax").because == "bought of a druggist");
    const PrintedPage percent(page + "    reading % w/w of acetic acid because \"so the label\"\n");
    CHECK(percent.taken("which percent of acetic acid") == "% w/w");
    CHECK(percent.question("which percent of acetic acid").verdict == Verdict::by_hand);
    CHECK(percent.question("which percent of formaldehyde").verdict != Verdict::by_hand);
}

TEST_CASE("a reading by hand of what is not on the page is told") {
    for (const std::string hand : {"fl oz us in column 3", "% w/w of borax"}) {
        CAPTURE(hand);
        const PrintedPage page("    | Hypo   2 oz\n    | Water to   20 oz\n    reading " + hand + " because \"so\"\n");
        REQUIRE(page.settled.faults.size() == 1);
        CHECK(page.settled.faults.front().find("no such column") != std::string::npos);
    }
}
