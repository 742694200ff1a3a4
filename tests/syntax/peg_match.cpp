// SPDX-License-Identifier: MIT
#include <algorithm>
#include <optional>

#include "peg.hpp"
#include "utf8.hpp"

namespace scruple::peg {
namespace {

using Kind = Expression::Kind;
using Place = std::optional<std::size_t>;

bool holds(const Expression& set, char32_t value) {
    const auto within = [value](auto range) { return range.first <= value && value <= range.second; };
    return std::any_of(set.ranges.begin(), set.ranges.end(), within) != set.negated;
}

class Matcher {
  public:
    Matcher(const Grammar& grammar, std::string_view text, const std::set<std::size_t>& leaves)
        : grammar_(grammar), text_(text), leaves_(leaves) {}

    Match result;

    Place rule(std::size_t number, std::size_t at) {
        const auto mark = result.events.size();
        const bool leaf = leaves_.contains(number);
        hidden_ += leaf ? 1 : 0;
        const auto end = match(grammar_.rules[number], at);
        hidden_ -= leaf ? 1 : 0;
        if (!end) {
            result.events.resize(mark);
        } else if (hidden_ == 0) {
            result.events.push_back({number, at, *end});
        } else {
            result.looked_up.insert(number);
        }
        return end;
    }

  private:
    Place match(const Expression& expression, std::size_t at) {
        switch (expression.kind) {
            case Kind::sequence:
                return sequence(expression, at);
            case Kind::choice:
                return choice(expression, at);
            case Kind::repeat:
                return repeat(expression, at);
            case Kind::follows:
                return look(expression, at) ? Place(at) : std::nullopt;
            case Kind::absent:
                return look(expression, at) ? std::nullopt : Place(at);
            case Kind::text:
                return text(expression, at);
            case Kind::set:
            case Kind::any:
                return character(expression, at);
            case Kind::rule:
                return rule(expression.rule, at);
        }
        return std::nullopt;
    }

    Place sequence(const Expression& expression, std::size_t at) {
        const auto mark = result.events.size();
        for (const auto& part : expression.parts) {
            const auto next = match(part, at);
            if (!next) {
                result.events.resize(mark);
                return std::nullopt;
            }
            at = *next;
        }
        return at;
    }

    Place choice(const Expression& expression, std::size_t at) {
        for (const auto& part : expression.parts) {
            if (const auto end = match(part, at)) return end;
        }
        return std::nullopt;
    }

    Place repeat(const Expression& expression, std::size_t at) {
        std::size_t count = 0;
        while (count < expression.most) {
            const auto next = match(expression.parts[0], at);
            if (!next) break;
            ++count;
            if (*next == at) break;
            at = *next;
        }
        return count >= expression.least ? Place(at) : std::nullopt;
    }

    bool look(const Expression& expression, std::size_t at) {
        ++hidden_;
        const auto found = match(expression.parts[0], at);
        --hidden_;
        return found.has_value();
    }

    [[nodiscard]] std::size_t past_gap(std::size_t at) const {
        while (at < text_.size()) {
            if (text_[at] == ' ' || text_[at] == '\t') {
                ++at;
            } else if (text_.substr(at).starts_with("\u00A0")) {
                at += 2;
            } else {
                break;
            }
        }
        return at;
    }

    [[nodiscard]] Place text(const Expression& expression, std::size_t at) const {
        for (const char byte : expression.text) {
            if (byte == ' ') {
                const auto next = past_gap(at);
                if (next == at) return std::nullopt;
                at = next;
            } else {
                if (at == text_.size() || text_[at] != byte) return std::nullopt;
                ++at;
            }
        }
        return at;
    }

    [[nodiscard]] Place character(const Expression& expression, std::size_t at) const {
        if (at == text_.size()) return std::nullopt;
        const auto value = decode(text_, at);
        return expression.kind == Kind::any || holds(expression, value) ? Place(at) : std::nullopt;
    }

    const Grammar& grammar_;
    std::string_view text_;
    const std::set<std::size_t>& leaves_;
    int hidden_ = 0;
};

}  // namespace

Match match(const Grammar& grammar, std::size_t rule, std::string_view text, const std::set<std::size_t>& leaves) {
    Matcher matcher(grammar, text, leaves);
    const auto end = matcher.rule(rule, 0);
    matcher.result.matched = end.has_value();
    matcher.result.end = end.value_or(0);
    return std::move(matcher.result);
}

}  // namespace scruple::peg
