// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "peg.hpp"
#include "utf8.hpp"

namespace scruple::peg {
namespace {

using Kind = Expression::Kind;

/// Past this depth of rules the first alternative is taken and nothing is repeated.
constexpr int deepest = 24;

/// What stands for "any character but these".
constexpr std::u32string_view letters = U"abcdeghlmnoprstuw-'µé·;C5(";

class Generator {
  public:
    Generator(const Grammar& grammar, std::mt19937& random) : grammar_(grammar), random_(random) {}

    std::string out;

    void rule(std::size_t number, int depth) { generate(grammar_.rules[number], depth + 1); }

  private:
    std::size_t below(std::size_t bound) { return random_() % bound; }

    void generate(const Expression& expression, int depth) {
        switch (expression.kind) {
            case Kind::sequence:
                for (const auto& part : expression.parts) generate(part, depth);
                break;
            case Kind::choice:
                generate(expression.parts[depth > deepest ? 0 : below(expression.parts.size())], depth);
                break;
            case Kind::repeat:
                repeat(expression, depth);
                break;
            case Kind::follows:
            case Kind::absent:
                break;
            case Kind::text:
                text(expression.text);
                break;
            case Kind::set:
                character(expression);
                break;
            case Kind::any:
                encode(letters[below(letters.size())], out);
                break;
            case Kind::rule:
                rule(expression.rule, depth);
                break;
        }
    }

    void repeat(const Expression& expression, int depth) {
        const auto more = depth > deepest ? 0 : below(expression.parts[0].kind == Kind::set ? 4 : 3);
        const auto wanted = std::min(expression.least + more, expression.most);
        for (std::size_t i = 0; i < wanted; ++i) generate(expression.parts[0], depth);
    }

    void gap() {
        constexpr std::array<std::string_view, 6> gaps = {" ", " ", " ", "   ", "\t", "\u00A0"};
        out += gaps[below(gaps.size())];
    }

    void text(std::string_view bytes) {
        for (const char byte : bytes) {
            if (byte == ' ') {
                gap();
            } else {
                out += byte;
            }
        }
    }

    void character(const Expression& set) {
        if (set.negated) return encode(letters[below(letters.size())], out);
        const auto [first, last] = set.ranges[below(set.ranges.size())];
        encode(first + static_cast<char32_t>(below(last - first + 1)), out);
    }

    const Grammar& grammar_;
    std::mt19937& random_;
};

}  // namespace

std::string generate(const Grammar& grammar, std::size_t rule, std::mt19937& random) {
    Generator generator(grammar, random);
    generator.rule(rule, 0);
    return std::move(generator.out);
}

}  // namespace scruple::peg
