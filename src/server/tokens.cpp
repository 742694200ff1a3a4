// SPDX-License-Identifier: MIT
// Semantic tokens: from the tree, so that colours are what the program reads.
#include <algorithm>
#include <array>

#include "keywords.hpp"
#include "requests.hpp"

namespace scruple::server {
namespace {

using namespace syntax;  // NOLINT(google-build-using-namespace): the nodes of the tree, all of them

enum class Type : std::uint8_t { keyword, class_, variable, property, number, unit, string, comment };
constexpr std::array names{"keyword", "class", "variable", "property", "number", "type", "string", "comment"};

struct Token {
    text::Span span;
    Type type;
};

class Tokens {
  public:
    explicit Tokens(const File& file) : file_(file), tree_(*file.tree) {}

    std::vector<Token> all() {
        for (const Statement& statement : tree_.statements) add(statement);
        for (const Occurrence& it : file_.names.all) add(it.span, it.defines ? Type::class_ : Type::variable);
        for (const Quantity& it : tree_.quantities) add(it);
        for (const syntax::Range& it : tree_.ranges) {
            add(it.low);
            add(it.high);
        }
        for (const Number& it : tree_.numbers) add(it.span, Type::number);
        for (const FormGiven& form : tree_.forms)
            for (const Name& word : Tree::run(tree_.names, form.words)) add(word.span, Type::property);
        settle();
        return std::move(all_);
    }

  private:
    void add(text::Span span, Type type) {
        if (!span.empty()) all_.push_back({span, type});
    }

    void add(const Quantity& it) {
        add(it.number.span, Type::number);
        add(it.unit_span, Type::unit);
    }

    void add(const Statement& statement) {
        add(statement.comment, Type::comment);
        const std::string_view line = file_.source.at(statement.span);
        const auto length = static_cast<std::uint32_t>(word_at_the_beginning(line).size());
        const bool name =
            std::holds_alternative<Ingredient>(statement.node) || std::holds_alternative<Bare>(statement.node);
        if (!name) add({statement.span.begin, statement.span.begin + length}, Type::keyword);
        for (std::size_t open = line.find('"'); open != std::string_view::npos;) {
            const std::size_t close = line.find('"', open + 1);
            if (close == std::string_view::npos) return;
            add({statement.span.begin + static_cast<std::uint32_t>(open),
                 statement.span.begin + static_cast<std::uint32_t>(close + 1)},
                Type::string);
            open = line.find('"', close + 1);
        }
    }

    /// In order, each place once: the longer of two that begin together, and what begins first.
    void settle() {
        std::ranges::sort(all_, [](const Token& a, const Token& b) {
            return a.span.begin != b.span.begin ? a.span.begin < b.span.begin : a.span.end > b.span.end;
        });
        std::uint32_t end = 0;
        std::erase_if(all_, [&end](const Token& it) {
            if (it.span.begin < end) return true;
            end = it.span.end;
            return false;
        });
    }

    const File& file_;
    const Tree& tree_;
    std::vector<Token> all_;
};

}  // namespace

Json token_legend() {
    return {{"tokenTypes", names}, {"tokenModifiers", Json::array()}};
}

Json semantic_tokens(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    Json data = Json::array();
    Position last;
    for (const Token& it : Tokens(*about.file).all()) {
        const Range range = about.positions.range(it.span);
        if (range.end.line != range.start.line) continue;
        const std::size_t lines = range.start.line - last.line;
        data.push_back(lines);
        data.push_back(lines == 0 ? range.start.character - last.character : range.start.character);
        data.push_back(range.end.character - range.start.character);
        data.push_back(static_cast<int>(it.type));
        data.push_back(0);
        last = range.start;
    }
    return {{"data", data}};
}

}  // namespace scruple::server
