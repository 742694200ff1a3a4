// SPDX-License-Identifier: MIT
#include "scruple/syntax/normal.hpp"

#include <doctest/doctest.h>

using scruple::syntax::normal_name;

TEST_CASE("what makes no difference between two names is folded") {
    CHECK(normal_name("Sodium  Sulphite") == "sodium sulfite");
    CHECK(normal_name("sodium\u00A0\tsulfite ") == normal_name("SODIUM SULFITE"));
    CHECK(normal_name("Ammonium Thiosulphate") == "ammonium thiosulfate");
    CHECK(normal_name("sulphuric acid") == normal_name("Sulfuric Acid"));
    CHECK(normal_name("potassium aluminium sulphate") == normal_name("potassium aluminum sulfate"));
    CHECK(normal_name("N‐methyl–p−aminophenol") == "n-methyl-p-aminophenol");
}

TEST_CASE("letter case is folded beyond ASCII") {
    CHECK(normal_name("ÉTHER") == normal_name("éther"));
    CHECK(normal_name("ХИНОН") == normal_name("хинон"));
    CHECK(normal_name("Β-naphthol") == normal_name("β-naphthol"));
}

TEST_CASE("what is different stays different") {
    CHECK(normal_name("sodium sulfite") != normal_name("sodium sulfate"));
    CHECK(normal_name("part A") != normal_name("partA"));
    CHECK(normal_name("grey") != normal_name("gray"));
    CHECK(normal_name("") == "");
    CHECK(normal_name("海波") == "海波");
}

TEST_CASE("the scratch text holds the name and nothing of the one before") {
    std::string scratch = "left over";
    normal_name("Borax", scratch);
    CHECK(scratch == "borax");
}
