// SPDX-License-Identifier: MIT
// Tidy over files that nobody wrote: sentences made from grammar/scruple.peg, in blocks, with comments between them.
#include <doctest/doctest.h>

#include <fstream>
#include <random>
#include <sstream>

#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "syntax/peg.hpp"
#include "tree_text.hpp"

using namespace scruple;

namespace {

peg::Grammar grammar() {
    std::ifstream file(SCRUPLE_SOURCE_DIR "/grammar/scruple.peg", std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    return peg::read(text.str());
}

class Writer {
  public:
    explicit Writer(unsigned seed) : random_(seed) {}

    std::string file() {
        std::string text;
        for (unsigned blocks = random_() % 4 + 1; blocks > 0; --blocks) {
            text += sentence("heading") + end();
            for (unsigned lines = random_() % 8; lines > 0; --lines) text += line();
        }
        return text;
    }

  private:
    std::string line() {
        const char* const rules[] = {"named", "fact", "step", "entry", "bare", "named", "fact"};
        const unsigned what = random_() % 10;
        if (what == 0) return "\n";
        if (what == 1) return "  # a remark\n";
        return std::string(random_() % 6, ' ') + sentence(rules[random_() % 7]) + end();
    }

    std::string end() { return random_() % 6 == 0 ? "   # why\n" : random_() % 9 == 0 ? " \t\r\n" : "\n"; }

    std::string sentence(const char* rule) { return peg::generate(grammar_, grammar_.number(rule), random_); }

    std::mt19937 random_;
    peg::Grammar grammar_ = grammar();
};

bool is_read(const syntax::Tree& tree) {
    for (const syntax::Statement& statement : tree.statements) {
        const auto* heading = std::get_if<syntax::Heading>(&statement.node);
        if (std::holds_alternative<syntax::Unread>(statement.node) || (heading != nullptr && heading->bad))
            return false;
    }
    return true;
}

/// A number and its unit are parted by a blank, also within the text of a detail.
std::string told_by(const text::Source& source, const syntax::Tree& tree) {
    std::string all = tree_text(source, tree);
    std::erase(all, ' ');
    return all;
}

std::string comments_of(const text::Source& source, const syntax::Tree& tree) {
    std::string all;
    for (const syntax::Statement& statement : tree.statements) all += std::string(source.at(statement.comment)) + "\n";
    return all;
}

}  // namespace

TEST_CASE("generated files: twice equals once, the tree stays, and each comment keeps its line") {
    Writer writer(5);
    int files = 0, lines = 0;
    while (files < 1500) {
        const text::Source source{"t", writer.file()};
        const syntax::Tree tree = syntax::parse(source);
        const text::Source once{"t", emit::tidy_text(source, tree)};
        const syntax::Tree again = syntax::parse(once);
        CAPTURE(source.bytes);
        CHECK(emit::tidy_text(once, again) == once.bytes);
        ++files;
        if (!is_read(tree)) continue;
        CHECK(told_by(once, again) == told_by(source, tree));
        CHECK(comments_of(once, again) == comments_of(source, tree));
        lines += static_cast<int>(tree.statements.size());
    }
    CHECK(lines > 2000);
}
