// SPDX-License-Identifier: MIT
// Pages of several solutions, and what is mixed of them. Pages are invented in the manner of old manuals; what they
// come to was worked out with GNU units 2.22 (`units "1 oz / 8 brfloz" g/l`) and by hand.
#include "page_workspace.hpp"

using scruple::test::PrintedPage;
using scruple::test::to_figures;

TEST_CASE("so much of each to an ounce of water") {
    const PrintedPage page(R"(
    book       A Manual, London, 1889
    is a       film developer
    | No. 1.
    | Pyrogallic acid ....... 1 oz.
    | Citric acid ........... 60 grs.
    | Water to .............. 8 ozs.
    | No. 2.
    | Liquor ammoniae .880 .. 1 oz.
    | Bromide of potassium .. ½ oz.
    | Water to .............. 20 ozs.
    | To 1 oz. of water add 20 minims of each.
)");
    CHECK(page.per_litre("pyrogallol") == to_figures(124.7));
    CHECK(page.line("ammonia").strength == "35 % w/w");
    REQUIRE(page.settled.for_use.size() == 1);
    const auto& use = page.settled.for_use.front();
    REQUIRE(use.shares.size() == 2);
    // 480 minims are a fluid ounce: one part in 26 of each
    CHECK(use.water == "24");
    CHECK(use.shares[0].parts == "1");
    CHECK(use.holds[0].per_litre == to_figures(124.7 / 26));
    // What is strong in a part of several is none too strong in use.
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("minims may be `m`, and what is never done is no part") {
    const PrintedPage page(R"(
    book       A Manual, London, 1889
    | A. Neutral oxalate of potash  5 ozs
    | Water  20 ozs
    | B. Sulphate of iron  5 ozs
    | Sulphuric acid  30 m
    | Water  20 ozs
    | Pour 1 part of B into 4 parts of A, never the reverse.
)");
    CHECK(page.line("sulfuric acid").amount == "30 minims uk");
    REQUIRE(page.settled.for_use.size() == 1);
    const auto& shares = page.settled.for_use.front().shares;
    REQUIRE(shares.size() == 2);
    CHECK(page.solution(shares[0].solution).label == "B");
    CHECK(shares[0].parts == "1");
    CHECK(shares[1].parts == "4");
}

TEST_CASE("baths with titles before their first lines, each with its own use") {
    const PrintedPage page(R"(
    book       A Handbook, London, 1925
    is a       toner
    | Bleach: Potassium ferricyanide 1 oz
    | Potassium bromide  1½ oz
    | Water to 20 oz
    | For use: 1 part with 9 parts of water.
    | Sulphide bath: Sodium sulphide (pure)  4 oz
    | Water to  20 oz
    | For use take 3 oz and water to make 20 oz.
)");
    REQUIRE(page.settled.solutions.size() == 2);
    CHECK(page.solution(0).label == "Bleach");
    CHECK(page.solution(1).label == "Sulphide bath");
    REQUIRE(page.settled.for_use.size() == 2);
    CHECK(page.settled.for_use[0].shares.front().solution == 0);
    CHECK(page.settled.for_use[0].water == "9");
    CHECK(page.settled.for_use[1].shares.front().solution == 1);
    CHECK(page.settled.for_use[1].shares.front().parts == "3");
    CHECK(page.settled.for_use[1].water == "17");
    CHECK(page.settled.for_use[1].holds.front().per_litre == to_figures(199.56 * 3 / 20));
}

TEST_CASE("how a strength is made of a stronger one is a note, and makes no volume") {
    const PrintedPage page(R"(
    book       A Formulary, Boston, 1930
    is a       stop bath
    | Water   32 ounces   1 liter
    | Acetic acid, 28%    1½ ounces   48 cc
    | To make 28% acetic acid from glacial, dilute three parts of glacial with eight parts of water.
)");
    CHECK(page.line("acetic acid").fault.empty());
    // 32 and 1.5 fluid ounces of 29.5735 ml
    CHECK(page.solution().makes_ml.value_or(0) == to_figures(990.7));
    CHECK(page.settled.not_read.size() == 1);
}

TEST_CASE("drops of a solution are of what stands before them") {
    const PrintedPage page(
        "    | Bromide of potassium, 10 drops of a 10 per cent solution\n    | Hypo  1 g\n    | Water to  1 l\n");
    CHECK(page.line("potassium bromide").amount == "0.5 ml");
    CHECK(page.line("potassium bromide").strength == "10 % w/v");
}

TEST_CASE("borax is its crystals, as hypo is") {
    const PrintedPage page("    | Borax  10 g\n    | Hypo  10 g\n    | Water  1 l\n");
    CHECK(page.line("borax").form == "decahydrate");
    CHECK(page.line("sodium thiosulfate").form == "pentahydrate");
    CHECK(page.question("which borax").verdict != scruple::printed::Verdict::open);
}
