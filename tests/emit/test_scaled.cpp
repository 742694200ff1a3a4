// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "texts.hpp"
#include "tree_text.hpp"

using namespace scruple;
using quantity::Exact;

namespace {

std::string scaled(const std::string& bytes, const Exact& factor, std::uint32_t heading = 0) {
    const text::Source source{"t", bytes};
    return emit::scaled_text(source, syntax::parse(source), heading, factor);
}

std::vector<std::uint32_t> recipes_of(const syntax::Tree& tree) {
    std::vector<std::uint32_t> found;
    for (std::uint32_t i = 0; i < tree.statements.size(); ++i)
        if (const auto* heading = std::get_if<syntax::Heading>(&tree.statements[i].node))
            if (heading->block == syntax::Block::recipe) found.push_back(i);
    return found;
}

std::uint32_t only_recipe(const std::string& bytes) {
    const auto found = recipes_of(syntax::parse({"t", bytes}));
    REQUIRE(found.size() == 1);
    return found[0];
}

}  // namespace

TEST_CASE("what grows with the batch is multiplied, all else is left") {
    const std::string written =
        "# of Lantern\n"
        "recipe Lantern\n"
        "    is a       film developer\n"
        "    variants   soft, normal\n"
        "    capacity   250 ml working per film 135\n"
        "\n"
        "part A  # 5 g of care\n"
        "    keeps      6 months full\n"
        "    water                               700 ml at 45 to 50 C\n"
        "    sodium sulfite (anhydrous)          90 g, 2 g now\n"
        "    potassium bromide                   1 g soft, 2 g normal\n"
        "    potassium bromide (10 % w/v)        5 to 8 ml, not above 30 C\n"
        "    acetic acid (28 % v/v)              about 3 ml, until pH 5.0\n"
        "    wetting agent                       4 drops\n"
        "    sodium hydroxide                    ? g\n"
        "    pour in 20 ml of lye, slowly\n"
        "    wait 15 min, stirring every 5 min\n"
        "    cool to 20 C\n"
        "    water to make                       1 l\n"
        "    expect sodium sulfite (anhydrous) 85 to 95 g/l\n"
        "\n"
        "working\n"
        "    dilute part A 1+3\n"
        "\n"
        "replenisher\n"
        "    replenish  20 ml per film 135\n"
        "    water to make                       1 l\n"
        "\n"
        "# of another\n"
        "recipe Other\n"
        "    water                               1 l\n";
    const std::string doubled =
        "# of Lantern\n"
        "recipe Lantern\n"
        "    is a       film developer\n"
        "    variants   soft, normal\n"
        "    capacity   250 ml working per film 135\n"
        "\n"
        "part A  # 5 g of care\n"
        "    keeps      6 months full\n"
        "    water                               1400 ml at 45 to 50 C\n"
        "    sodium sulfite (anhydrous)          180 g, 4 g now\n"
        "    potassium bromide                   2 g soft, 4 g normal\n"
        "    potassium bromide (10 % w/v)        10 to 16 ml, not above 30 C\n"
        "    acetic acid (28 % v/v)              about 6 ml, until pH 5.0\n"
        "    wetting agent                       8 drops\n"
        "    sodium hydroxide                    ? g\n"
        "    pour in 40 ml of lye, slowly\n"
        "    wait 15 min, stirring every 5 min\n"
        "    cool to 20 C\n"
        "    water to make                       2 l\n"
        "    expect sodium sulfite (anhydrous) 85 to 95 g/l\n"
        "\n"
        "working\n"
        "    dilute part A 1+3\n"
        "\n"
        "replenisher\n"
        "    replenish  20 ml per film 135\n"
        "    water to make                       2 l\n";
    CHECK(scaled(written, 2, 1) == doubled);
}

TEST_CASE("what is accepted stays accepted, and the limits of a meeting are not amounts") {
    const std::string written =
        "recipe A\n    accept     acid on sulfite because \"20 g of it, outdoors\"\n    water to make 1 l\n";
    CHECK(scaled(written, 2) ==
          "recipe A\n    accept     acid on sulfite because \"20 g of it, outdoors\"\n    water to make 2 l\n");
}

TEST_CASE("a share is exact, in the author's units") {
    const std::string written = "recipe A\n    metol 100 grains\n    water to make 1 l\n";
    CHECK(scaled(written, {1, 3}) == "recipe A\n    metol 33 1/3 grains\n    water to make 1/3 l\n");
    CHECK(scaled(scaled(written, {1, 3}), 3) == written);
}

TEST_CASE("the spelling of a number may become canonical, its value does not change") {
    const std::string written = "recipe A\n    metol 1 1/2 oz av\n    borax ½ oz av\n    water to make 0.50 l\n";
    const std::string canonical = "recipe A\n    metol 1.5 oz av\n    borax 0.5 oz av\n    water to make 0.5 l\n";
    CHECK(scaled(written, 1) == canonical);
    CHECK(scaled(scaled(written, 7), {1, 7}) == canonical);
}

TEST_CASE("there and back again gives the same text, for every recipe of the project") {
    const Exact factors[] = {3, 2, 7, {1, 3}, {1, 2}, {2, 7}, {13, 8}, {1000, 3}, {1, 128}};
    std::size_t tried = 0;
    for (const text::Source& source : project_texts()) {
        const syntax::Tree tree = syntax::parse(source);
        for (const std::uint32_t heading : recipes_of(tree)) {
            const std::string canonical = emit::scaled_text(source, tree, heading, 1);
            const std::uint32_t at = only_recipe(canonical);
            for (const Exact& factor : factors) {
                CAPTURE(source.path);
                CAPTURE(factor.ratio_text());
                const std::string there = scaled(canonical, factor, at);
                CHECK(scaled(there, Exact(1) / factor, only_recipe(there)) == canonical);
                ++tried;
            }
        }
    }
    CHECK(tried > 100);
}

TEST_CASE("lines are written anew where they stand") {
    const std::string written =
        "recipe Rook\n"
        "    water                          820 ml at 40 C\n"
        "    sodium sulfite (anhydrous)     30 g, 3 g now\n"
        "    \"sodium ascorbate\"             6 g soft, 9 g normal, slowly\n"
        "    potassium bromide              1/2 oz av   # the good jar\n"
        "    water to make                  1 l\n";
    plan::Rewriting water{.statement = 1}, sulfite{.statement = 2}, ascorbate{.statement = 3}, bromide{.statement = 4};
    water.amounts = {800};
    water.unit = "ml";
    sulfite.substance = "sodium sulfite (heptahydrate)";
    sulfite.amounts = {Exact(60015, 1000)};
    sulfite.unit = "g";
    sulfite.now = Exact(60015, 10000);
    sulfite.in_place_of = "sodium sulfite (anhydrous)";
    ascorbate.made = "by conversion from vitamin C";
    bromide.substance = "the bromide stock of the cellar, 10 %";
    bromide.amounts = {Exact(14175, 100)};
    bromide.unit = "ml";
    bromide.in_place_of = "potassium bromide";
    const std::vector<plan::Rewriting> lines{water, sulfite, ascorbate, bromide};
    const text::Source source{"t", written};
    CHECK(emit::scaled_text(source, syntax::parse(source), 0, 2, lines) ==
          "recipe Rook\n"
          "    water                          1600 ml at 40 C\n"
          "    sodium sulfite (heptahydrate)  120.03 g, 12.003 g now  # in place of 60 g sodium sulfite (anhydrous)\n"
          "    \"sodium ascorbate\"             12 g soft, 18 g normal, by conversion from vitamin C, slowly\n"
          "    the bromide stock of the cellar, 10 % 283.5 ml   # the good jar; in place of 1 oz av potassium bromide\n"
          "    water to make                  2 l\n");
}

TEST_CASE("a quoted name goes with its quotes") {
    const text::Source source{"t", "recipe Rook\n    \"4-aminophenol\"    2 g\n"};
    plan::Rewriting anew{.statement = 1};
    anew.substance = "\"4-aminophenol\" (10 % w/v)";
    anew.amounts = {20};
    anew.unit = "ml";
    CHECK(emit::scaled_text(source, syntax::parse(source), 0, 1, {&anew, 1}) ==
          "recipe Rook\n    \"4-aminophenol\" (10 % w/v) 20 ml\n");
}

TEST_CASE("a line that is made already says from what") {
    const text::Source source{"t", "recipe Rook\n    sodium ascorbate    2 g, by conversion, slowly\n"};
    plan::Rewriting anew{.statement = 1};
    anew.made = "by conversion from ascorbic acid";
    CHECK(emit::scaled_text(source, syntax::parse(source), 0, 1, {&anew, 1}) ==
          "recipe Rook\n    sodium ascorbate    2 g, by conversion from ascorbic acid, slowly\n");
}

TEST_CASE("the comment has each variant's amount") {
    const text::Source source{"t", "recipe Rook\n    potassium bromide    1 g soft, 2 g hard\n"};
    plan::Rewriting anew{.statement = 1};
    anew.substance = "bromide stock";
    anew.amounts = {10, 20};
    anew.unit = "ml";
    anew.in_place_of = "potassium bromide";
    CHECK(emit::scaled_text(source, syntax::parse(source), 0, 2, {&anew, 1}) ==
          "recipe Rook\n    bromide stock        20 ml soft, 40 ml hard"
          "  # in place of 2 g soft, 4 g hard potassium bromide\n");
}
