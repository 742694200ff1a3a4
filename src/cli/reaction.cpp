// SPDX-License-Identifier: MIT
#include "reaction.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "call.hpp"
#include "typed.hpp"

namespace scruple::cli {
namespace {

using chemistry::Formula;

constexpr std::string_view digits = "0123456789";
constexpr std::size_t most_digits = 6;

Stop no_reaction(std::string_view why) {
    return {Exit::wrong_call,
            fmt::format("{}; a reaction is such as `scruple react \"Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2\"`", why)};
}

std::string trimmed(std::string_view text) {
    const auto begin = text.find_first_not_of(' ');
    if (begin == std::string_view::npos) return {};
    return std::string(text.substr(begin, text.find_last_not_of(' ') - begin + 1));
}

/// At each `mark` that stands outside of parentheses.
std::vector<std::string> split_at(std::string_view text, std::string_view mark) {
    std::vector<std::string> pieces;
    std::size_t begin = 0;
    int depth = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        depth += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
        if (depth > 0 || text.substr(i, mark.size()) != mark) continue;
        pieces.push_back(trimmed(text.substr(begin, i - begin)));
        begin = i + mark.size();
        i = begin - 1;
    }
    pieces.push_back(trimmed(text.substr(begin)));
    return pieces;
}

std::optional<Formula> formula_in(std::string_view text) {
    auto read = chemistry::read_formula(text);
    if (auto* formula = std::get_if<Formula>(&read)) return std::move(*formula);
    return std::nullopt;
}

/// No name is written so: the checker says what is wrong with it as a formula.
bool meant_as_formula(std::string_view text) {
    const bool capital = !text.empty() && text.front() >= 'A' && text.front() <= 'Z';
    return capital && text.find(' ') == std::string_view::npos && text.find_first_of(digits) != std::string_view::npos;
}

std::pair<std::string, std::string> sides_of(const std::string& typed) {
    for (const std::string_view arrow : {"->", "→"}) {
        const auto pieces = split_at(typed, arrow);
        if (pieces.size() > 2) throw no_reaction("there is more than one arrow");
        if (pieces.size() == 2) return {pieces[0], pieces[1]};
    }
    throw no_reaction("there is no arrow `->`");
}

std::string label(std::size_t term) {
    return fmt::format("the reaction, substance {}", term + 1);
}
std::string amount_label(std::size_t i) {
    return fmt::format("--with, amount {}", i + 1);
}

}  // namespace

TypedReaction::Term TypedReaction::term(std::string piece) {
    if (piece.empty()) throw no_reaction("a substance is missing beside an arrow or a `+`");
    const std::size_t counted = std::min(piece.find_first_not_of(digits), piece.size());
    const std::string rest = trimmed(std::string_view(piece).substr(counted));
    const bool counts = counted > 0 && !rest.empty() && (piece[counted] == ' ' || formula_in(rest));
    if (!counts) return {std::nullopt, std::move(piece)};
    const std::string number = piece.substr(0, counted);
    if (counted > most_digits || std::stoi(number) == 0)
        throw no_reaction(fmt::format("`{}` is no number of a reaction", number));
    return {std::stoi(number), rest};
}

TypedReaction::Amount TypedReaction::amount(const std::string& piece) {
    const std::vector<std::string> words = words_of(piece);
    if (words.size() < 2) return {piece, {}};
    const auto joined = [](auto begin, auto end) { return fmt::format("{}", fmt::join(begin, end, " ")); };
    if (formula_in(words.back())) return {joined(words.begin(), words.end() - 1), words.back()};
    if (formula_in(words.front())) return {joined(words.begin() + 1, words.end()), words.front()};
    return {as_recipe_line(piece), {}};
}

TypedReaction::TypedReaction(const std::string& reaction, const std::optional<std::string>& amounts) {
    const auto [left, right] = sides_of(reaction);
    for (std::string& piece : split_at(left, " + ")) terms_.push_back(term(std::move(piece)));
    left_ = terms_.size();
    for (std::string& piece : split_at(right, " + ")) terms_.push_back(term(std::move(piece)));
    if (terms_.size() > chemistry::most_substances) throw no_reaction("there are too many substances");
    if (!amounts) return;
    for (const std::string& piece : split_at(*amounts, ", ")) amounts_.push_back(amount(piece));
}

Asked TypedReaction::asked() const {
    Asked asked;
    for (std::size_t i = 0; i < terms_.size(); ++i) {
        const std::string& what = terms_[i].what;
        if (formula_in(what)) continue;
        if (meant_as_formula(what))
            asked.formula(label(i), what);
        else
            asked.ingredient(label(i), what + " 1 mol");
    }
    for (std::size_t i = 0; i < amounts_.size(); ++i) {
        if (amounts_[i].formula.empty())
            asked.ingredient(amount_label(i), amounts_[i].line);
        else
            asked.measure(amount_label(i), amounts_[i].line);
    }
    return asked;
}

plan::Substance TypedReaction::substance(const driver::Loaded& loaded, std::size_t i) const {
    const std::string& what = terms_[i].what;
    const check::Model& model = loaded.checked.model;
    if (const auto formula = formula_in(what)) return plan::substance_of(model, what, *formula);
    const check::Addition& found = asked_addition(loaded, label(i));
    if (found.chemical == check::none || found.strength || found.saturated_at)
        throw Stop{Exit::wrong_call, fmt::format("`{}` is a solution; a reaction is between substances", what)};
    return plan::substance_of(model, found.chemical, found.form);
}

plan::Reaction TypedReaction::reaction(const driver::Loaded& loaded) const {
    plan::Reaction reaction;
    for (std::size_t i = 0; i < terms_.size(); ++i)
        (i < left_ ? reaction.left : reaction.right).push_back(substance(loaded, i));
    const auto numbered = [](const Term& term) { return term.number.has_value(); };
    if (std::ranges::none_of(terms_, numbered)) return reaction;
    for (const Term& term : terms_) reaction.numbers.emplace_back(term.number.value_or(1));
    return reaction;
}

std::vector<plan::Taken> TypedReaction::taken(const driver::Loaded& loaded) const {
    using By = check::Addition::By;
    const check::Model& model = loaded.checked.model;
    std::vector<plan::Taken> all;
    for (std::size_t i = 0; i < amounts_.size(); ++i) {
        const check::Addition& found = asked_addition(loaded, amount_label(i));
        const std::string& text = amounts_[i].formula;
        const auto formula = formula_in(text);
        if (found.chemical == check::none)
            throw Stop{Exit::wrong_call, "`--with` takes amounts of chemicals, and one of these is a solution"};
        if (!formula)
            all.push_back(plan::taken_of(model, found));
        else if (found.by == By::mass || found.by == By::amount)
            all.push_back(plan::taken_of(plan::substance_of(model, text, *formula), found.shares.front(),
                                         found.by == By::amount));
        else
            throw Stop{Exit::wrong_call, fmt::format("`{}` is weighed: give grams or moles", text)};
    }
    return all;
}

}  // namespace scruple::cli
