// SPDX-License-Identifier: MIT
// A small interpreter for the notation of grammar/scruple.peg, made from that text itself.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <random>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace scruple::peg {

struct Expression {
    enum class Kind { sequence, choice, repeat, follows, absent, text, set, any, rule } kind = Kind::sequence;
    std::vector<Expression> parts;  ///< of sequence and choice; the one that is repeated or looked for
    std::string text;               ///< of text; the name of a rule
    std::size_t least = 0, most = 0;
    std::vector<std::pair<char32_t, char32_t>> ranges;  ///< of a set
    bool negated = false;
    std::size_t rule = 0;
};

/// A rule that took something, and what.
struct Event {
    std::size_t rule;
    std::size_t begin, end;
    friend bool operator==(const Event&, const Event&) = default;
};

struct Grammar {
    std::vector<std::string> names;
    std::vector<Expression> rules;
    std::map<std::string, std::size_t, std::less<>> numbers;

    [[nodiscard]] std::size_t number(std::string_view name) const { return numbers.find(name)->second; }
};

/// Throws std::runtime_error with the place where the notation is broken.
[[nodiscard]] Grammar read(std::string_view text);

struct Match {
    bool matched = false;
    std::size_t end = 0;
    std::vector<Event> events;        ///< of the rules that took part, each after the rules within it
    std::set<std::size_t> looked_up;  ///< rules that held in a look ahead, or within a leaf
};

/// Matches a rule at the start of a text. Rules within `leaves` and within looks ahead leave no events.
[[nodiscard]] Match match(const Grammar& grammar, std::size_t rule, std::string_view text,
                          const std::set<std::size_t>& leaves);

/// A sentence of the rule, looks ahead left aside, so that another rule may be the one that takes it.
[[nodiscard]] std::string generate(const Grammar& grammar, std::size_t rule, std::mt19937& random);

}  // namespace scruple::peg
