// SPDX-License-Identifier: MIT
// The outline of a file is that of its tree, though most of its lines are not read for it.
#include "scruple/syntax/outline.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <tuple>

#include "scruple/syntax/parse.hpp"

using namespace scruple;
using syntax::Block;

namespace {

std::string with_line_ends(const std::string& text, std::string_view line_end) {
    std::string other;
    for (const char c : text) {
        if (c == '\n')
            other += line_end;
        else
            other += c;
    }
    return other;
}

void check_outline(std::string bytes) {
    const text::Source source{"a.scruple", std::move(bytes)};
    CHECK(syntax::outline(source) == syntax::outline_of(syntax::parse(source)));
}

}  // namespace

TEST_CASE("an outline has the headings, and what stands under them") {
    const text::Source source{"a.scruple",
                              "# a notebook\n\nnote nothing\nrecipe Heron  # grey\n    is a film developer\n\n"
                              "part A\n    part B 5 ml\n\trecipe Coot 500 ml\nmetol 5 g\nworking\nlog book\nrecipe"};
    const auto outline = syntax::outline(source);
    CHECK(outline.before == 2);
    REQUIRE(outline.blocks.size() == 6);
    const auto& [heron, part_a, coot, working, log, nameless] =
        std::tie(outline.blocks[0], outline.blocks[1], outline.blocks[2], outline.blocks[3], outline.blocks[4],
                 outline.blocks[5]);
    CHECK(heron.block == Block::recipe);
    CHECK(source.at(heron.title) == "Heron");
    CHECK(source.at(heron.span) == "recipe Heron");
    CHECK(heron.statement == 2);
    CHECK(heron.end == 4);
    CHECK_FALSE(heron.mixes);
    CHECK(part_a.block == Block::part);
    CHECK(part_a.end == part_a.statement + 2);
    CHECK(coot.bad);
    CHECK(source.at(coot.size) == "500 ml");
    CHECK(coot.mixes);
    CHECK(working.title.empty());
    CHECK(log.block == Block::log);
    CHECK(nameless.bad);
    CHECK(nameless.statement == 10);
    CHECK_FALSE(syntax::has_recipes_only(outline));
    CHECK(syntax::has_recipes_only(syntax::outline({"b.scruple", "recipe A\nworking\nbath B\nreplenisher\n"})));
}

TEST_CASE("the outline of every recipe file here is that of its tree, with any line ends") {
    std::size_t files = 0;
    for (const char* folder : {"tests/cases", "recipes", "src/library"}) {
        for (const auto& entry :
             std::filesystem::recursive_directory_iterator(std::string(SCRUPLE_SOURCE_DIR) + "/" + folder)) {
            if (entry.path().extension() != ".scruple") continue;
            CAPTURE(entry.path().string());
            std::ifstream file(entry.path(), std::ios::binary);
            const std::string text{std::istreambuf_iterator<char>(file), {}};
            check_outline(text);
            check_outline(with_line_ends(text, "\r\n"));
            check_outline("\uFEFF" + with_line_ends(text, "\r"));
            ++files;
        }
    }
    CHECK(files > 150);
}

TEST_CASE("a bad heading is one in the outline too, and what only begins like one is none") {
    for (const char* line : {"part A and B", "part", "bath 5 ml", "part A 5 ml", "working 100 ml", "log on", "recipe",
                             "conversion of", "conversion of water 5 g", "part \"A B\"", "replenisher, strong"})
        check_outline(std::string("recipe Heron\n") + line + "\nwater 1 l\n");
    const text::Source source{"a.scruple", "recipe Heron\npart A and B\n"};
    const auto outline = syntax::outline(source);
    REQUIRE(outline.blocks.size() == 2);
    CHECK(outline.blocks[1].bad);
}

TEST_CASE("a heading past the longest line is none, in the outline either") {
    for (const auto length : {syntax::longest_line, syntax::longest_line + 1})
        check_outline("recipe " + std::string(length - 7, 'x') + "\nwater 1 l\n");
    check_outline("recipe\u00A0A\n\u00A0part\u00A0B\nwater 1 l");
}
