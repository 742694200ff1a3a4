// SPDX-License-Identifier: MIT
// Any text gives a tree: line ends of all kinds, comments, blanks, junk, lines of megabytes.
#include <doctest/doctest.h>

#include <random>

#include "kinds.hpp"
#include "scruple/syntax/outline.hpp"
#include "scruple/syntax/parse.hpp"
#include "support/sanitized.hpp"
#include "utf8.hpp"

using namespace scruple;
using syntax::kind_of;

namespace {

struct Parsed {
    explicit Parsed(std::string text) : source{"a.scruple", std::move(text)}, tree(syntax::parse(source)) {
        CHECK(syntax::outline(source) == syntax::outline_of(tree));
    }
    text::Source source;
    syntax::Tree tree;

    [[nodiscard]] std::string_view line(std::size_t i) const { return source.at(tree.statements.at(i).span); }
    [[nodiscard]] std::string_view comment(std::size_t i) const { return source.at(tree.statements.at(i).comment); }
    [[nodiscard]] std::string kind(std::size_t i) const { return kind_of(tree.statements.at(i), tree); }
};

std::string repeated(std::string_view piece, std::size_t bytes) {
    std::string text;
    text.reserve(bytes + piece.size());
    while (text.size() < bytes) text += piece;
    return text;
}

}  // namespace

TEST_CASE("nothing gives nothing") {
    CHECK(Parsed("").tree.statements.empty());
    CHECK(Parsed(" \t\u00A0\n\r\n\r").tree.statements.empty());
    CHECK(Parsed("\uFEFF").tree.statements.empty());
}

TEST_CASE("lines end with any line end, and the last with none") {
    const Parsed parsed("\uFEFFrecipe A\r\nmetol 5 g\rwater 1 l\n\u00A0stir");
    REQUIRE(parsed.tree.statements.size() == 4);
    CHECK(parsed.line(0) == "recipe A");
    CHECK(parsed.line(1) == "metol 5 g");
    CHECK(parsed.line(2) == "water 1 l");
    CHECK(parsed.line(3) == "stir");
    CHECK(parsed.kind(3) == "pause");
}

TEST_CASE("comments and blank lines are kept") {
    const Parsed parsed("# first\n\n  metol 5 g  # how much\n\t\n\n#\nwater 1 l#x\n");
    REQUIRE(parsed.tree.statements.size() == 4);
    CHECK(parsed.kind(0) == "comment");
    CHECK(parsed.comment(0) == "# first");
    CHECK(parsed.line(0).empty());
    CHECK_FALSE(parsed.tree.statements[0].blank_before);
    CHECK(parsed.line(1) == "metol 5 g");
    CHECK(parsed.comment(1) == "# how much");
    CHECK(parsed.tree.statements[1].blank_before);
    CHECK(parsed.comment(2) == "#");
    CHECK(parsed.tree.statements[2].blank_before);
    CHECK(parsed.kind(3) == "loose_ingredient");
    CHECK(parsed.comment(3).empty());
    CHECK_FALSE(parsed.tree.statements[3].blank_before);
}

TEST_CASE("a number is exact as far as its words go, and loose past that") {
    const auto number = [](const std::string& text) {
        const Parsed parsed("metol " + text + " g");
        REQUIRE(parsed.tree.ranges.size() == 1);
        return parsed.tree.ranges[0].low.number;
    };
    const auto is = [&](const std::string& text, std::int64_t top, std::uint32_t bottom) {
        const auto found = number(text);
        INFO(text);
        CHECK(found.numerator == top);
        CHECK(found.denominator == bottom);
    };
    is("5", 5, 1);
    is("0.750", 750, 1000);
    is("½", 1, 2);
    is("1½", 3, 2);
    is("1 1/2", 3, 2);
    is("2⁄3", 2, 3);
    is("⅞", 7, 8);
    is("-3", -3, 1);
    is("−3.5", -35, 10);
    is("+3", 3, 1);
    is("9223372036854775807", 9223372036854775807, 1);
    is("0.000000001", 1, 1000000000);
    is("9223372036854775808", 0, 0);
    is("0.00000000001", 0, 0);
    is("1/5000000000", 0, 0);
    is("9223372036854775807 1/2", 0, 0);
    is("1/0", 0, 0);
}

TEST_CASE("what one reading of a line has put in the tree is taken back when another takes the line") {
    // Each of these has a reading that fails late: a dilution, shares, a form, a log entry.
    for (const char* line : {"dilute acetic acid 5 ml", "capacity 6 films 135 per 1 l, 5 lumps",
                             "metol (a, 10 % w/v) 5 g x y", "1 G soft, 2 G normal oops",
                             "keeps 6 months full, 2 months \"x\"", "2026-11-02 received metol (a) 5 g from"}) {
        const Parsed parsed(std::string(line) + "\n");
        INFO(std::string(line));
        const auto& tree = parsed.tree;
        const bool ingredient = std::holds_alternative<syntax::Ingredient>(tree.statements.at(0).node);
        CHECK(tree.ranges.size() == (ingredient ? 1 : 0));
        CHECK(tree.names.empty());
        CHECK(tree.forms.empty());
        CHECK(tree.quantities.empty());
        CHECK(tree.formats.empty());
        CHECK(tree.items.empty());
        CHECK(tree.capacity_items.empty());
        CHECK(tree.keepings.empty());
    }
}

TEST_CASE("a line past the limit is unread, and one at the limit is read") {
    const auto line = [](std::size_t length) { return std::string(length - 4, 'x') + " 5 g"; };
    CHECK(Parsed(line(syntax::longest_line)).kind(0) == "ingredient");
    CHECK(Parsed(line(syntax::longest_line + 1)).kind(0) == "unread");
    CHECK(Parsed("µ" + line(syntax::longest_line - 1)).kind(0) == "ingredient");
    CHECK(Parsed("µ" + line(syntax::longest_line)).kind(0) == "unread");
    const Parsed parsed(line(20000) + " # end\nmetol 5 g\n");
    CHECK(parsed.line(0).size() == 20000);
    CHECK(parsed.kind(1) == "ingredient");
}

TEST_CASE("megabytes of anything are read to their end") {
    constexpr std::size_t bytes = test::as_many_as_sensible(10u << 20);
    const auto reads = [](const std::string& text) {
        const Parsed parsed(text);
        return !parsed.tree.statements.empty();
    };
    for (const char* piece : {"x", " ", " x", "(", "( ", "\"", "1 ", "1:", "to make ", ", ", "#", "a from \"", "é",
                              "1 g soft, ", "- ", "+ "}) {
        INFO(std::string(piece));
        CHECK(reads("x" + repeated(piece, bytes)));
    }
    for (const char* piece :
         {"a 1 b ", "a (b ", "1 to ", "a \t ", "a, ", "1 x at ", "? ", "the rest ", "x from \"y "}) {
        INFO(std::string(piece));
        CHECK(reads(repeated(repeated(piece, 4000) + "\n", bytes / 10)));
    }
}

TEST_CASE("any valid UTF-8 gives a tree whose spans lie in order within the text") {
    std::mt19937 random(7);
    constexpr std::u32string_view liked = U" \t\n\r,()#\"+-0123456789.:/?%gml½éЖ水🎞\u00A0\u2212→";
    for (int round = 0; round < 2000; ++round) {
        std::string text;
        for (auto left = random() % 120; left != 0; --left) {
            const char32_t point = random() % 3 != 0 ? liked[random() % liked.size()] : 1 + random() % 0xD7FF;
            peg::encode(point, text);
        }
        const Parsed parsed(text);
        std::uint32_t last = 0;
        for (const auto& statement : parsed.tree.statements) {
            CHECK(statement.span.begin >= last);
            CHECK(statement.span.end >= statement.span.begin);
            CHECK(statement.span.end <= text.size());
            last = statement.span.end;
        }
    }
}
