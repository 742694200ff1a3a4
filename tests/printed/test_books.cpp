// SPDX-License-Identifier: MIT
// Figures as books print them, quoted by source; what they come to was worked out with GNU units 2.22
// (`units "200 grain / 80 brfloz" g/l`) and by hand.
#include "page_workspace.hpp"

using scruple::test::PrintedPage;
using scruple::test::to_figures;
using Verdict = scruple::printed::Verdict;

TEST_CASE("imperial against us fluid ounces: The Barnet Book of Photography, one-solution developer") {
    const PrintedPage page(R"(
    is a       film developer
    book       The Barnet Book of Photography, about 1900, Great Britain
    | Water                   80 oz       1000 c.c.
    | Metol                   200 grs     6 g
    | Sulphite of soda        6 oz        75
    | Hydroquinone            150 grs     4 g
    | Potassium bromide       50 grs      1½
    | Carbonate of potash     2 oz        25
)");
    CHECK(page.per_litre("metol") == to_figures(5.70));
    CHECK(page.per_litre("sodium sulfite") == to_figures(74.83));
    CHECK(page.per_litre("hydroquinone") == to_figures(4.28));
    CHECK(page.per_litre("potassium bromide") == to_figures(1.4254));
    CHECK(page.per_litre("potassium carbonate") == to_figures(24.94));
    CHECK(page.solution().makes == "80 fl oz uk");
    CHECK(page.question("whose fluid ounce in column 1").verdict == Verdict::clear);
    CHECK(page.question("whose ounce for what is weighed").verdict == Verdict::clear);
    CHECK(page.line("sodium sulfite").amount == "6 oz av");
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("the columns alone tell the fluid ounce, without the book's country") {
    const PrintedPage page(R"(
    | Water                   20 oz     1000 c.c.
    | Sodium sulphite         2 oz      100
    | Hydroquinone            160 gr    18
    | Citric acid             60 gr     6
    | Potassium bromide       30 gr     3
    | Caustic soda            160 gr    18
)");
    // The Barnet Book of Photography, hydroquinone pair, both solutions on one page: 99.78, 18.24, 6.84, 3.42 g/l.
    CHECK(page.taken("whose fluid ounce in column 1") == "fl oz imperial");
    CHECK(page.taken("whose ounce for what is weighed") == "oz avoirdupois");
    CHECK(page.per_litre("sodium sulfite") == to_figures(99.78));
    CHECK(page.per_litre("hydroquinone") == to_figures(18.24));
    CHECK(page.per_litre("citric acid") == to_figures(6.84));
    CHECK(page.per_litre("potassium bromide") == to_figures(3.42));
    CHECK(page.per_litre("sodium hydroxide") == to_figures(18.24));
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("both ounces in one book: Cassell's Cyclopaedia of Photography, 1911") {
    const std::string book = "    book   Cassell's Cyclopaedia of Photography, 1911, Great Britain\n";
    const PrintedPage carbonate(book + "    | Potassium carbonate  1 oz   55 g\n    | Water to   20 oz   1000 c.c.\n");
    CHECK(carbonate.per_litre("potassium carbonate") == to_figures(54.7));
    CHECK(carbonate.line("potassium carbonate").amount == "1 oz ap");
    const PrintedPage tropical(book + "    | Hypo   2 oz   220 g\n    | Water to   10 oz   1000 c.c.\n");
    CHECK(tropical.per_litre("sodium thiosulfate") == to_figures(218.9));
    CHECK(tropical.line("sodium thiosulfate").form == "pentahydrate");
    const PrintedPage acid(book + "    | Hypo   3 oz   150 g\n    | Water to   20 oz   1000 c.c.\n");
    CHECK(acid.per_litre("sodium thiosulfate") == to_figures(149.7));
    CHECK(acid.line("sodium thiosulfate").amount == "3 oz av");
    CHECK(acid.question("whose ounce for what is weighed").verdict == Verdict::clear);
}

TEST_CASE("both ounces on one page: each line keeps its own") {
    const PrintedPage page(R"(
    book   Cassell's Cyclopaedia of Photography, 1911, Great Britain
    | Water                 20 oz   1000 ccs
    | Potassium carbonate   1 oz    55 g
    | Hypo                  3 oz    150 g
    | Sodium sulphite       1 oz    50 g
)");
    CHECK(page.line("potassium carbonate").amount == "1 oz ap");
    CHECK(page.line("sodium thiosulfate").amount == "3 oz av");
    CHECK(page.line("sodium sulfite").amount == "1 oz av");
}

TEST_CASE("three systems, the metric one 9.5 % stronger: the permanganate test for hypo in wash water") {
    // A formula that its maker printed in three systems; by the litre 1.096, 1.200 and 1.083 g, and twice these.
    const PrintedPage page(R"(
    | Potassium permanganate    4 grains    0.3 g    4 3/4 grains
    | Sodium hydroxide          8 grains    0.6 g    9½ grains
    | Water to make             8 oz        250 ml   10 oz
)");
    CHECK(page.taken("whose fluid ounce in column 1") == "fl oz us");
    CHECK(page.taken("whose fluid ounce in column 3") == "fl oz imperial");
    CHECK(page.per_litre("potassium permanganate") == to_figures(1.096));
    CHECK(page.per_litre("sodium hydroxide") == to_figures(2.19));
    const auto& evidence = page.settled.evidence;
    CHECK(std::ranges::count(evidence, "column 2 is 9.5 % stronger than column 1 in every line") == 1);
}

TEST_CASE("a scaling check: the acetic silver-nitrate spot test") {
    const PrintedPage page(R"(
    | Water                     375 ml
    | Acetic acid 28 %          62.5 ml
    | Silver nitrate            3.75 g
    | Water to make             500 ml
)");
    CHECK(page.per_litre("silver nitrate") == to_figures(7.5));
    CHECK(page.per_litre("acetic acid") == to_figures(125));
    // Two military manuals make two liquids of that name, 3 % apart: NAVEDTRA 14209 by weight, US Army SS0513 by
    // volume.
    CHECK(page.question("which percent of acetic acid").verdict == Verdict::open);
}

TEST_CASE("an American hardener of 1916: its liquids add up") {
    const PrintedPage page(R"(
    book   a photographic magazine, 1916, America
    | Water                     80 oz
    | Sulphite of soda          16 oz
    | Acetic acid 28 per cent   48 oz
    | Alum                      16 oz
)");
    CHECK(page.taken("whose fluid ounce") == "fl oz us");
    // 80 and 48 US fluid ounces are 2366 and 1420 ml; 16 oz av are 453.6 g.
    REQUIRE(page.solution().makes_ml);
    CHECK(*page.solution().makes_ml == to_figures(2366 + 1420));
    CHECK(page.solution().added_up);
    CHECK(page.per_litre("potassium alum") * *page.solution().makes_ml / 1000 == to_figures(453.6));
}
