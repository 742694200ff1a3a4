// SPDX-License-Identifier: MIT
// Lines with what they are to be read as, from two files that people write.
#include <doctest/doctest.h>

#include <fstream>

#include "describe.hpp"
#include "kinds.hpp"
#include "scruple/syntax/parse.hpp"

using namespace scruple;

namespace {

std::ifstream open(const std::string& name) {
    std::ifstream in(std::string(SCRUPLE_SOURCE_DIR) + "/tests/syntax/" + name);
    REQUIRE(in);
    return in;
}

void replace_all(std::string& text, std::string_view what, std::string_view with) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size())) {
        text.replace(at, what.size(), with);
    }
}

std::string unescaped(std::string line) {
    replace_all(line, "\\t", "\t");
    replace_all(line, "\\u{A0}", "\u00A0");
    return line;
}

}  // namespace

TEST_CASE("awkward lines are taken by the rule that is written beside them") {
    auto in = open("lines.txt");
    std::size_t count = 0;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line[0] == '#') continue;
        const auto bar = line.find(" | ");
        REQUIRE(bar != std::string::npos);
        const text::Source source{"lines", unescaped(line.substr(bar + 3))};
        const auto tree = syntax::parse(source);
        INFO(line);
        REQUIRE(tree.statements.size() == 1);
        CHECK(syntax::kind_of(tree.statements[0], tree) == line.substr(0, bar));
        ++count;
    }
    CHECK(count > 250);
}

TEST_CASE("the samples of the language hold what is written below them") {
    auto in = open("samples.txt");
    std::string line, below;
    std::size_t count = 0;
    while (std::getline(in, line)) {
        if (line.empty() || line[0] == '#') continue;
        REQUIRE(std::getline(in, below));
        const text::Source source{"samples", line};
        const auto tree = syntax::parse(source);
        INFO(line);
        REQUIRE(tree.statements.size() == 1);
        CHECK("    " + syntax::describe(tree.statements[0], tree, source) == below);
        ++count;
    }
    CHECK(count > 110);
}
