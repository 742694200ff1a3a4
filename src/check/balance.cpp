// SPDX-License-Identifier: MIT
#include "scruple/check/balance.hpp"

#include <algorithm>

#include "listed.hpp"

namespace scruple::check {
namespace {

using chemistry::Balances;
using chemistry::Coefficients;
using quantity::Exact;

/// A message shows no more ways than these.
constexpr std::size_t most_ways_shown = 4;

const Reactant& at(const Reactants& reactants, std::size_t i) {
    const std::size_t left = reactants.left.size();
    return i < left ? reactants.left[i] : reactants.right[i - left];
}

std::vector<chemistry::Formula> formulas(const std::vector<Reactant>& side) {
    std::vector<chemistry::Formula> result;
    result.reserve(side.size());
    for (const Reactant& reactant : side) result.push_back(reactant.formula);
    return result;
}

std::vector<std::string> names_where(const Reactants& reactants, const Coefficients& numbers,
                                     bool (*fits)(const Exact&)) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (fits(numbers[i])) names.push_back(at(reactants, i).name);
    return names;
}

void add_term(std::string& side, const std::string& name, const Exact& number) {
    if (number.is_zero()) return;
    if (!side.empty()) side += " + ";
    if (number != Exact(1)) side += quantity::exact_text(number) + " ";
    side += name;
}

std::string offer_of_one(const Reactants& reactants, const Coefficients& way) {
    const auto idle = names_where(reactants, way, [](const Exact& number) { return number.is_zero(); });
    const std::string reaction = quoted(reaction_words(reactants, way));
    return idle.empty() ? reaction : reaction + ": " + listed(idle) + " can take no part in it";
}

std::string offer_of_several(const Reactants& reactants, const Balances& found) {
    const std::size_t shown = std::min(found.ways.size(), most_ways_shown);
    std::string text = "the numbers that are meant: it balances in " + std::to_string(found.ways.size()) +
                       " independent ways, which can go on side by side: ";
    for (std::size_t i = 0; i < shown; ++i)
        text += (i > 0 ? "; " : "") + quoted(reaction_words(reactants, found.ways[i]));
    if (shown < found.ways.size()) text += " …";
    if (found.together.empty()) return text;
    return text + "; all at once, in the smallest numbers: " + quoted(reaction_words(reactants, found.together));
}

/// Water is what is left out most often: the reaction with it, where that balances; empty otherwise.
std::string offer_with_water(const Reactants& reactants) {
    static const Reactant water{"water", std::get<chemistry::Formula>(chemistry::read_formula("H2O"))};
    for (const auto side : {&Reactants::right, &Reactants::left}) {
        Reactants wet = reactants;
        (wet.*side).push_back(water);
        const Balances found = balances(wet);
        if (found.only() != nullptr)
            return quoted(reaction_words(wet, *found.only())) + ", with the water that is missing";
    }
    return {};
}

std::string offer_of_none(const Reactants& reactants, const Balances& found) {
    if (found.turned.empty()) {
        const std::string wet = offer_with_water(reactants);
        return wet.empty() ? "other substances: no numbers balance these, so one is missing or one too many" : wet;
    }
    const auto turned = names_where(reactants, found.turned, [](const Exact& number) { return number < 0; });
    return quoted(reaction_words(reactants, found.turned)) + ", with " + listed(turned) + " on the other side";
}

}  // namespace

std::string imbalance_words(const chemistry::Imbalance& off) {
    std::string left, right, words;
    for (const auto& element : off.elements) {
        std::string& side = element.surplus > Exact(0) ? right : left;
        if (!side.empty()) side += ", ";
        side += quantity::exact_text(quantity::magnitude(element.surplus)) + " " +
                std::string(chemistry::symbol(element.element));
    }
    const auto add = [&words](const std::string& more) { words += (words.empty() ? "" : "; ") + more; };
    if (!left.empty()) add("too many on the left: " + left);
    if (!right.empty()) add("too many on the right: " + right);
    if (off.charge != 0) add("the charge is off by " + std::to_string(off.charge));
    return words;
}

std::string reaction_words(const Reactants& reactants, const Coefficients& numbers) {
    std::string left, right;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const bool on_left = (i < reactants.left.size()) != (numbers[i] < 0);
        add_term(on_left ? left : right, at(reactants, i).name, quantity::magnitude(numbers[i]));
    }
    return left + " -> " + right;
}

Balances balances(const Reactants& reactants) {
    return chemistry::balances(formulas(reactants.left), formulas(reactants.right));
}

std::string balance_offer(const Reactants& reactants) {
    const Balances found = balances(reactants);
    if (found.ways.size() > 1) return offer_of_several(reactants, found);
    return found.ways.empty() ? offer_of_none(reactants, found) : offer_of_one(reactants, found.ways.front());
}

}  // namespace scruple::check
