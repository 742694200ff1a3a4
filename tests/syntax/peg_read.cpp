// SPDX-License-Identifier: MIT
#include <algorithm>
#include <stdexcept>

#include "peg.hpp"
#include "utf8.hpp"

namespace scruple::peg {
namespace {

using Kind = Expression::Kind;

class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {}

    Grammar read() {
        Grammar grammar;
        for (skip(); !rest().empty(); skip()) {
            const auto name = take_name();
            expect("<-");
            if (!grammar.numbers.emplace(name, grammar.names.size()).second) fail("rule defined twice: " + name);
            grammar.names.push_back(name);
            grammar.rules.push_back(choice());
        }
        for (auto& rule : grammar.rules) resolve(grammar, rule);
        return grammar;
    }

  private:
    [[nodiscard]] std::string_view rest() const { return text_.substr(at_); }
    [[noreturn]] void fail(const std::string& why) const {
        throw std::runtime_error("byte " + std::to_string(at_) + ": " + why);
    }

    void skip() {
        while (at_ < text_.size()) {
            if (text_[at_] == '#') {
                at_ = std::min(text_.find('\n', at_), text_.size());
            } else if (text_[at_] == ' ' || text_[at_] == '\n') {
                ++at_;
            } else {
                break;
            }
        }
    }

    bool take(std::string_view token) {
        if (!rest().starts_with(token)) return false;
        at_ += token.size();
        skip();
        return true;
    }
    void expect(std::string_view token) {
        if (!take(token)) fail("expected " + std::string(token));
    }

    static bool letter(char byte) { return (byte >= 'a' && byte <= 'z') || byte == '_'; }
    [[nodiscard]] bool at_definition() const {
        auto place = at_;
        while (place < text_.size() && letter(text_[place])) ++place;
        const auto begin = text_.find_first_not_of(' ', place);
        return place != at_ && begin != std::string_view::npos && text_.substr(begin).starts_with("<-");
    }
    std::string take_name() {
        const auto begin = at_;
        while (at_ < text_.size() && letter(text_[at_])) ++at_;
        if (at_ == begin) fail("expected a name");
        std::string name(text_.substr(begin, at_ - begin));
        skip();
        return name;
    }

    Expression choice() {
        Expression all{.kind = Kind::choice, .parts = {}, .text = {}, .ranges = {}};
        do {
            all.parts.push_back(sequence());
        } while (take("/"));
        return all.parts.size() == 1 ? all.parts[0] : all;
    }

    Expression sequence() {
        Expression all{.kind = Kind::sequence, .parts = {}, .text = {}, .ranges = {}};
        while (!rest().empty() && rest()[0] != '/' && rest()[0] != ')' && !at_definition()) {
            all.parts.push_back(prefixed());
        }
        if (all.parts.empty()) fail("empty sequence");
        return all.parts.size() == 1 ? all.parts[0] : all;
    }

    Expression prefixed() {
        if (take("&")) return around(Kind::follows, suffixed());
        if (take("!")) return around(Kind::absent, suffixed());
        return suffixed();
    }

    static Expression around(Kind kind, Expression inner, std::size_t least = 0, std::size_t most = 0) {
        return {.kind = kind, .parts = {std::move(inner)}, .text = {}, .least = least, .most = most, .ranges = {}};
    }

    Expression suffixed() {
        auto inner = primary();
        if (take("?")) return around(Kind::repeat, inner, 0, 1);
        if (take("*")) return around(Kind::repeat, inner, 0, SIZE_MAX);
        if (take("+")) return around(Kind::repeat, inner, 1, SIZE_MAX);
        if (!take("{")) return inner;
        std::size_t digits = 0;
        const auto times = std::stoul(std::string(rest().substr(0, 5)), &digits);
        at_ += digits;
        expect("}");
        return around(Kind::repeat, inner, times, times);
    }

    Expression primary() {
        if (take("(")) {
            auto inner = choice();
            expect(")");
            return inner;
        }
        if (take(".")) return {.kind = Kind::any, .parts = {}, .text = {}, .ranges = {}};
        if (rest().starts_with("'")) return text();
        if (rest().starts_with("[")) return set();
        return {.kind = Kind::rule, .parts = {}, .text = take_name(), .ranges = {}};
    }

    char32_t character() {
        if (!rest().starts_with("\\")) return decode(text_, at_);
        const char escaped = text_.at(at_ + 1);
        at_ += 2;
        switch (escaped) {
            case 't':
                return '\t';
            case 'n':
                return '\n';
            case 'r':
                return '\r';
            case 'u':
                return code_point();
            default:
                return static_cast<unsigned char>(escaped);
        }
    }

    char32_t code_point() {
        const auto close = text_.find('}', at_);
        const auto value = std::stoul(std::string(text_.substr(at_ + 1, close - at_ - 1)), nullptr, 16);
        at_ = close + 1;
        return static_cast<char32_t>(value);
    }

    Expression text() {
        Expression result{.kind = Kind::text, .parts = {}, .text = {}, .ranges = {}};
        for (++at_; !rest().starts_with("'");) encode(character(), result.text);
        expect("'");
        return result;
    }

    Expression set() {
        Expression result{.kind = Kind::set, .parts = {}, .text = {}, .ranges = {}};
        ++at_;
        result.negated = rest().starts_with("^");
        if (result.negated) ++at_;
        while (!rest().starts_with("]")) {
            const auto first = character();
            const bool range = rest().starts_with("-") && !rest().starts_with("-]");
            if (range) ++at_;
            result.ranges.emplace_back(first, range ? character() : first);
        }
        expect("]");
        return result;
    }

    void resolve(const Grammar& grammar, Expression& expression) const {
        for (auto& part : expression.parts) resolve(grammar, part);
        if (expression.kind != Kind::rule) return;
        const auto found = grammar.numbers.find(expression.text);
        if (found == grammar.numbers.end()) throw std::runtime_error("no rule is named " + expression.text);
        expression.rule = found->second;
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

}  // namespace

Grammar read(std::string_view text) {
    return Reader(text).read();
}

}  // namespace scruple::peg
