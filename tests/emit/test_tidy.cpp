// SPDX-License-Identifier: MIT
#include <random>

#include "golden.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "texts.hpp"
#include "tree_text.hpp"

using namespace scruple;

namespace {

std::string tidied(const std::string& bytes) {
    const text::Source source{"t", bytes};
    return emit::tidy_text(source, syntax::parse(source));
}

std::string said_by(const std::string& bytes) {
    const text::Source source{"t", bytes};
    return tree_text(source, syntax::parse(source));
}

/// The same text with its blanks made worse: more of them, other ones, odd indents, doubled blank lines.
std::string ruffled(const std::string& bytes, std::mt19937& random) {
    const char* const blanks[] = {"  ", "\t", "\u00A0", " \u00A0 ", " "};
    std::string result;
    bool in_quotes = false;
    bool in_comment = false;
    for (const char c : bytes) {
        if (c == '#') in_comment = true;
        if (c == '"') in_quotes = !in_quotes;
        if (c == ' ' && !in_quotes && !in_comment)
            result += blanks[random() % 5];
        else
            result += c;
        if (c != '\n') continue;
        in_quotes = in_comment = false;
        if (random() % 8 == 0) result += "\n \t\n";
        if (random() % 3 == 0) result += "\t  ";
    }
    return result;
}

std::string without_blanks(const std::string& bytes) {
    std::string result;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const bool no_break = bytes.compare(i, 2, "\u00A0") == 0;
        if (no_break) ++i;
        if (!no_break && std::string_view(" \t\r\n").find(bytes[i]) == std::string_view::npos) result += bytes[i];
    }
    return result;
}

/// Characters of the language struck out or put in at random places, between whole characters.
std::string spoiled(std::string bytes, std::mt19937& random) {
    for (int i = 0; i < 40 && !bytes.empty(); ++i) {
        const std::size_t at = random() % bytes.size();
        if (static_cast<signed char>(bytes[at]) < 0) continue;
        if (random() % 2 == 0)
            bytes.erase(at, 1);
        else
            bytes.insert(at, 1, "\"#,():%?1.gx \t\n\r"[random() % 16]);
    }
    return bytes;
}

}  // namespace

TEST_CASE("spoiled text loses nothing but blanks, and tidy still settles it") {
    std::mt19937 random(11);
    for (int round = 0; round < 10; ++round) {
        for (const text::Source& source : project_texts()) {
            const std::string worse = spoiled(source.bytes, random);
            const std::string once = tidied(worse);
            CAPTURE(source.path);
            CAPTURE(round);
            CHECK(without_blanks(once) == without_blanks(worse));
            CHECK(tidied(once) == once);
        }
    }
}

TEST_CASE("tidy twice equals once, and says the same") {
    const auto texts = project_texts();
    REQUIRE(texts.size() > 20);
    for (const text::Source& source : texts) {
        CAPTURE(source.path);
        const std::string once = tidied(source.bytes);
        CHECK(tidied(once) == once);
        CHECK(said_by(once) == said_by(source.bytes));
    }
}

TEST_CASE("ruffled blanks are tidied away, and nothing else") {
    std::mt19937 random(7);
    for (const text::Source& source : project_texts()) {
        CAPTURE(source.path);
        const std::string worse = ruffled(source.bytes, random);
        REQUIRE(said_by(worse) == said_by(source.bytes));
        const std::string once = tidied(worse);
        CHECK(said_by(once) == said_by(source.bytes));
        CHECK(tidied(once) == once);
    }
}

TEST_CASE("the samples of the language reference are tidy already") {
    const std::string page =
        "# A page.\n"
        "\n"
        "# The lamp lit at dusk.\n"
        "recipe Lantern\n"
        "    is a       film developer\n"
        "    strength   working\n"
        "    capacity   one-shot, 250 ml working per film 135, at least 12 ml part A per film 135\n"
        "\n"
        "part A\n"
        "    keeps      6 months full, 2 months half full\n"
        "    caution    \"Gloves.  Sensitises skin on repeated contact.\"\n"
        "    water                               700 ml at 45 to 50 C\n"
        "    sodium sulfite (anhydrous)          90 g, a pinch now  # a pinch is enough\n"
        "    metol                               5 g\n"
        "    stir until clear\n"
        "\n"
        "    # what is left\n"
        "    sodium sulfite                      the rest\n"
        "    water to make                       1 l\n"
        "    expect pH 11.2 to 11.6\n"
        "\n"
        "working\n"
        "    use within 2 h\n"
        "    dilute part A 1+3\n"
        "\n"
        "chemical sodium carbonate\n"
        "    form       anhydrous       Na2CO3\n"
        "    form       monohydrate     Na2CO3·H2O\n"
        "\n"
        "supplier Tidewater\n"
        "    postage    6.50 EUR, none over 75 EUR\n"
        "    sodium sulfite (anhydrous)   500 g   8.90 EUR\n"
        "    metol                        100 g   9.90 EUR\n"
        "\n"
        "log\n"
        "    2026-11-02 received   sodium sulfite (anhydrous) 500 g from Tidewater 8.90 EUR\n"
        "    2026-11-12 processed  4 films 135 in Lantern working\n"
        "    2026-11-20 on shelf   borax (decahydrate) 180 g\n"
        "\n"
        "process roll film\n"
        "    Lantern working      8 to 12 min at 20 C\n"
        "    Breakwater working   5 min\n"
        "    wash                 10 min, running\n"
        "\n"
        "plan December\n"
        "    2026-12-03            6 films 135 through roll film\n"
        "    each Thursday from 2026-12-10 to 2026-12-31   4 films 120 through roll film\n";
    CHECK(tidied(page) == page);
}

TEST_CASE("line ends, blanks and comments find their places") {
    CHECK(tidied("") == "");
    CHECK(tidied("\n\n  \n") == "");
    CHECK(tidied("\xEF\xBB\xBFrecipe A\r\nwater 1l\r\n\r\n\r\n\r\nstir 1 min") ==
          "recipe A\n    water                               1 l\n\n    stir 1 min\n");
    CHECK(tidied("recipe A\nwater 1 l\n# of B\nrecipe B") ==
          "recipe A\n    water                               1 l\n\n# of B\nrecipe B\n");
    CHECK(tidied("recipe A\nwater 1 l\n    # of A\n\nrecipe B") ==
          "recipe A\n    water                               1 l\n    # of A\n\nrecipe B\n");
    CHECK(tidied("recipe A\nwater 1 l\n\n# --- part two ---\n\nrecipe B") ==
          "recipe A\n    water                               1 l\n\n# --- part two ---\n\nrecipe B\n");
    CHECK(tidied("recipe A\nthe   water to make  \n") == "recipe A\n    the water to make\n");
    CHECK(tidied("recipe A\nwater\u00A01\u00A0l # two  blanks\t") ==
          "recipe A\n    water                               1 l  # two  blanks\n");
}

TEST_CASE("a line that cannot be read keeps every byte") {
    CHECK(tidied("recipe A\n  capacity \t lots  of \"it \n") == "recipe A\n    capacity \t lots  of \"it\n");
}

TEST_CASE("a name too long for the column pushes its own line alone") {
    const std::string very_long(60, 'x');
    CHECK(tidied("recipe A\nwater 1 l\n" + very_long + " 5 g\n") ==
          "recipe A\n    water                               1 l\n    " + very_long + "  5 g\n");
}

TEST_CASE("a long run of comments takes a time like its length") {
    std::string many = "recipe A\n";
    for (int i = 0; i < 200000; ++i) many += "#\n";
    CHECK(tidied(many).size() > many.size());
}
