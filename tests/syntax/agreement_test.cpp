// SPDX-License-Identifier: MIT
// The readable grammar and the PEGTL rules say the same: sentences made from the one, and
// spoiled in many ways, are read alike by both, rule by rule and byte by byte.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <sstream>

#include "kinds.hpp"
#include "peg.hpp"
#include "scruple/syntax/parse.hpp"
#include "traced.hpp"

using namespace scruple;

namespace {

std::string file_text(const std::string& path) {
    std::ifstream in(std::string(SCRUPLE_SOURCE_DIR) + "/" + path, std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

const peg::Grammar& grammar() {
    static const auto read = peg::read(file_text("grammar/scruple.peg"));
    return read;
}

std::set<std::size_t> leaf_rules() {
    std::set<std::size_t> leaves;
    for (const auto& rule : syntax::rule_names()) {
        if (rule.leaf && grammar().numbers.contains(rule.name)) leaves.insert(grammar().number(rule.name));
    }
    return leaves;
}

/// The rules that a statement can be, the kinds of heading, fact, step and entry told apart.
void add_statement_rules(const peg::Expression& expression, std::vector<std::size_t>& rules) {
    using Kind = peg::Expression::Kind;
    if (expression.kind == Kind::choice || expression.kind == Kind::sequence) {
        for (const auto& part : expression.parts) add_statement_rules(part, rules);
    }
    if (expression.kind != Kind::rule) return;
    const auto& inner = grammar().rules[expression.rule];
    const auto is_rule = [](const peg::Expression& part) { return part.kind == Kind::rule; };
    if (inner.kind == Kind::choice && std::all_of(inner.parts.begin(), inner.parts.end(), is_rule)) {
        add_statement_rules(inner, rules);
    } else {
        rules.push_back(expression.rule);
    }
}

std::vector<std::size_t> statement_rules() {
    std::vector<std::size_t> rules;
    add_statement_rules(grammar().rules[grammar().number("statement")], rules);
    return rules;
}

std::string shown(const std::vector<peg::Event>& events, std::string_view text) {
    std::string all;
    for (const auto& event : events) {
        all +=
            grammar().names[event.rule] + " `" + std::string(text.substr(event.begin, event.end - event.begin)) + "`\n";
    }
    return all;
}

std::vector<peg::Event> events_of(const std::vector<syntax::Taken>& taken) {
    std::vector<peg::Event> events;
    for (const auto& one : taken) events.push_back({grammar().number(one.rule), one.begin, one.end});
    return events;
}

/// One line from one of the two lists, at the first place where they differ.
std::string difference(const std::vector<peg::Event>& a, const std::vector<peg::Event>& b, std::string_view text) {
    const auto [in_a, in_b] = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
    const auto from = std::max<std::ptrdiff_t>(0, in_a - a.begin() - 4);
    const auto some = [&](const auto& all) {
        const auto first = all.begin() + std::min<std::ptrdiff_t>(from, std::ssize(all));
        return shown({first, first + std::min<std::ptrdiff_t>(8, all.end() - first)}, text);
    };
    return "text: " + std::string(text) + "\nPEG text:\n" + some(a) + "PEGTL rules:\n" + some(b);
}

/// The rule that took each statement, by the readable grammar.
std::vector<std::string> statement_kinds(const std::vector<peg::Event>& events) {
    static const std::set<std::string> tails = {"ingredient", "process_entry", "price_entry", "loose_ingredient"};
    static const auto heads = [] {
        std::set<std::string> names;
        for (const auto rule : statement_rules()) names.insert(grammar().names[rule]);
        return names;
    }();
    std::vector<std::string> kinds;
    std::string kind;
    for (const auto& event : events) {
        const auto& name = grammar().names[event.rule];
        if (tails.contains(name)) kind = name;
        if (heads.contains(name) && name != "named" && name != "loosely_named") kind = name;
        if (name == "statement") kinds.push_back(kind);
    }
    return kinds;
}

/// What the tree shows of a kind: it does not tell apart the ways in which a line is not read.
std::string kind_in_tree(const std::string& kind) {
    if (kind == "bad_figure" || kind == "bad_keyword") return "bad_line";
    return kind == "overlong" ? "unread" : kind;
}

struct Agreement {
    std::set<std::size_t> leaves = leaf_rules();
    std::set<std::size_t> reached;
    std::size_t lines = 0;

    void check(const std::string& text) {
        const auto by_text = peg::match(grammar(), grammar().number("file"), text, leaves);
        const auto by_rules = events_of(syntax::trace(text));
        lines += static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1;
        REQUIRE(by_text.matched);
        REQUIRE(by_text.end == text.size());
        if (by_text.events != by_rules) FAIL(difference(by_text.events, by_rules, text));
        for (const auto& event : by_text.events) reached.insert(event.rule);
        reached.insert(by_text.looked_up.begin(), by_text.looked_up.end());
        check_tree(text, statement_kinds(by_text.events));
    }

    static void check_tree(const std::string& text, const std::vector<std::string>& kinds) {
        const text::Source source{"a.scruple", text};
        const auto tree = syntax::parse(source);
        std::size_t next = 0;
        for (const auto& statement : tree.statements) {
            if (std::holds_alternative<syntax::CommentOnly>(statement.node)) continue;
            REQUIRE(next < kinds.size());
            INFO(source.at(statement.span));
            REQUIRE(syntax::kind_of(statement, tree) == kind_in_tree(kinds[next++]));
        }
        REQUIRE(next == kinds.size());
    }
};

/// Spoils a text: takes out, doubles, exchanges or puts in a piece, never within a character.
class Spoiler {
  public:
    explicit Spoiler(std::mt19937& random) : random_(random) {}

    std::string spoil(std::string text) {
        for (auto times = 1 + below(3); times != 0; --times) {
            const auto [begin, end] = piece(text);
            const auto taken = text.substr(begin, end - begin);
            switch (below(4)) {
                case 0:
                    text.erase(begin, end - begin);
                    break;
                case 1:
                    text.insert(end, taken);
                    break;
                case 2:
                    text.erase(begin, end - begin), text.insert(boundary(text, below(text.size() + 1)), taken);
                    break;
                default:
                    text.insert(begin, pieces[below(pieces.size())]);
                    break;
            }
        }
        return text;
    }

  private:
    static constexpr std::array<std::string_view, 74> pieces = {
        "(",          ")",       ", ",         ",",
        " ",          "\t",      "\u00A0",     "#",
        " #",         "\"",      "+",          " + ",
        "-",          "->",      " → ",        "5",
        " 5 ",        "0,7",     "1:9",        "½",
        "1/2",        " 1 1/2 ", ".",          "%",
        " g",         "ml ",     " to ",       " to make ",
        " at ",       " per ",   " from ",     " from \"x\"",
        " EUR",       "6 EUR",   " until ",    "?",
        "é",          "\r",      "\n",         "\r\n",
        " now",       "films ",  "8x10 in",    " C",
        "°C",         "pH ",     "2026-11-02", "recipe ",
        "part ",      "working", "stir ",      "wait ",
        "–",          "−",       " oz",        " fl oz us",
        " in ",       " of ",    " the rest",  "optional",
        "slowly",     "H",       "' ",         ":",
        "=",          "\u2014",  "\u3042",     "\xF0\x9F\x8E\x9E",
        "10 %",       " w/v",    "is a ",      "do \"",
        "set aside ", "expect "};

    std::size_t below(std::size_t bound) { return random_() % bound; }

    static std::size_t boundary(const std::string& text, std::size_t at) {
        while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80) ++at;
        return at;
    }

    std::pair<std::size_t, std::size_t> piece(const std::string& text) {
        const auto begin = boundary(text, below(text.size() + 1));
        return {begin, boundary(text, std::min(text.size(), begin + below(6)))};
    }

    std::mt19937& random_;
};

}  // namespace

TEST_CASE("every rule of the readable grammar is a PEGTL rule, and the other way round") {
    std::set<std::string> in_text(grammar().names.begin(), grammar().names.end());
    std::set<std::string> in_rules;
    for (const auto& rule : syntax::rule_names()) in_rules.emplace(rule.name);
    for (const auto& name : in_text) CHECK_MESSAGE(in_rules.contains(name), name << " is not among the PEGTL rules");
    for (const auto& name : in_rules) CHECK_MESSAGE(in_text.contains(name), name << " is not in scruple.peg");
}

TEST_CASE("no rule can loop without taking anything") {
    CHECK(syntax::analysis_problems() == 0);
}

TEST_CASE("sentences of the readable grammar, whole and spoiled, are read alike by both") {
    std::mt19937 random(20261102);
    Agreement agreement;
    Spoiler spoiler(random);
    for (const auto rule : statement_rules()) {
        if (grammar().names[rule] == "overlong") continue;
        // Ingredients have by far the most rules below them.
        const int sentences = grammar().names[rule] == "named" ? 600 : 150;
        for (int i = 0; i < sentences; ++i) {
            const auto sentence = peg::generate(grammar(), rule, random);
            agreement.check(sentence);
            agreement.check(spoiler.spoil(sentence) + "\n" + spoiler.spoil(sentence));
        }
    }
    for (int i = 0; i < 200; ++i) agreement.check(peg::generate(grammar(), grammar().number("file"), random));
    agreement.check(std::string(4096, 'x') + "\n" + std::string(4097, 'x') + "\n  " + std::string(4097, '5') +
                    " # end");
    MESSAGE(agreement.lines << " lines");
    for (std::size_t rule = 0; rule < grammar().names.size(); ++rule) {
        CHECK_MESSAGE(agreement.reached.contains(rule), grammar().names[rule] << " was never reached");
    }
}

TEST_CASE("the built-in library is read alike by both") {
    Agreement agreement;
    for (const char* name : {"acids", "alkalis", "conversions", "developing-agents", "film-formats", "water"}) {
        agreement.check(file_text("src/library/" + std::string(name) + ".scruple"));
    }
    CHECK(agreement.lines > 300);
}
