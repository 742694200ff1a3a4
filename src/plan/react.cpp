// SPDX-License-Identifier: MIT
#include "scruple/plan/react.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "react_words.hpp"
#include "scruple/check/balance.hpp"
#include "scruple/check/making.hpp"

namespace scruple::plan {

namespace {

using check::Exact;
using check::Id;
using check::Model;
using chemistry::Coefficients;
using Reagent = Reacted::Reagent;
using Product = Reacted::Product;

std::vector<check::Reactant> reactants(const std::vector<Substance>& side) {
    std::vector<check::Reactant> result;
    result.reserve(side.size());
    for (const Substance& substance : side) result.push_back({substance.name, substance.formula});
    return result;
}

std::vector<chemistry::Term> numbered(const std::vector<Substance>& side, const Exact* numbers) {
    std::vector<chemistry::Term> result;
    result.reserve(side.size());
    for (const Substance& substance : side)
        result.push_back({static_cast<std::int32_t>((numbers++)->to_double()), substance.formula});
    return result;
}

using Numbers = std::variant<Coefficients, Refusal>;

chemistry::Imbalance imbalance(const Reaction& reaction, const Coefficients& numbers) {
    return chemistry::imbalance(numbered(reaction.left, numbers.data()),
                                numbered(reaction.right, numbers.data() + reaction.left.size()));
}

Numbers as_written(const Reaction& reaction, const check::Reactants& all) {
    const auto off = imbalance(reaction, reaction.numbers);
    if (off.balanced()) return reaction.numbers;
    return Refusal{fmt::format("The reaction does not balance: {}.\nWrite {}.", check::imbalance_words(off),
                               check::balance_offer(all))};
}

Numbers found(const check::Reactants& all) {
    const chemistry::Balances balances = check::balances(all);
    if (balances.only() != nullptr) return *balances.only();
    return Refusal{fmt::format("No one set of numbers balances this reaction.\nWrite {}.", check::balance_offer(all))};
}

/// Nobody writes a 1: a reaction without any number may balance as it stands.
bool balances_in_ones(const Reaction& reaction) {
    const Coefficients ones(reaction.left.size() + reaction.right.size(), 1);
    return imbalance(reaction, ones).balanced();
}

/// Of the same chemical, or the same formula but for water of crystallisation.
bool is_same(const Substance& a, const Substance& b) {
    if (a.chemical != check::none && a.chemical == b.chemical) return true;
    return chemistry::without_water(a.formula) == chemistry::without_water(b.formula);
}

struct Working {
    const Model& model;
    const Reaction& reaction;
    const std::vector<Taken>& taken;
    Coefficients numbers;
    Exact turns;  ///< moles of the reaction as written
};

Exact taken_mol(const std::vector<Taken>& taken, const Substance& what) {
    Exact sum;
    for (const Taken& one : taken)
        if (is_same(one.what, what)) sum += one.mol;
    return sum;
}

bool is_taken(const std::vector<Taken>& taken, const Substance& what) {
    return std::ranges::any_of(taken, [&](const Taken& one) { return is_same(one.what, what); });
}

/// One mole where nothing is taken.
Exact turns_of(const Working& work) {
    std::optional<Exact> least;
    for (std::size_t i = 0; i < work.reaction.left.size(); ++i) {
        const Substance& what = work.reaction.left[i];
        if (!is_taken(work.taken, what)) continue;
        Exact turns = taken_mol(work.taken, what) / work.numbers[i];
        if (!least || turns < *least) least = std::move(turns);
    }
    return least.value_or(1);
}

Reagent reagent(const Working& work, std::size_t i) {
    const Substance& what = work.reaction.left[i];
    const Exact mol = work.turns * work.numbers[i];
    Reagent reagent{what,
                    work.numbers[i],
                    is_taken(work.taken, what),
                    false,
                    plain(mol, "mol"),
                    plain_grams(mol * chemistry::molar_mass(what.formula)),
                    {},
                    {},
                    {}};
    if (!reagent.taken) return reagent;
    const Exact there = taken_mol(work.taken, what);
    reagent.limits = there == mol;
    if (reagent.limits) return reagent;
    reagent.excess_percent = plain((there - mol) / mol * 100, "%", 3);
    for (const Taken& one : work.taken) {
        if (!is_same(one.what, what)) continue;
        reagent.left_over.push_back(figure_of(one, one.amount * (there - mol) / there));
        reagent.left_names.push_back(one.name);
    }
    return reagent;
}

bool is_gas(const Model& model, const Substance& what) {
    return what.form != check::none && check::is_gas(model.chemicals[what.chemical].forms[what.form]);
}

Product product(const Working& work, std::size_t i) {
    const Substance& what = work.reaction.right[i];
    const Exact& number = work.numbers[work.reaction.left.size() + i];
    const Exact mol = work.turns * number;
    const Exact grams = mol * chemistry::molar_mass(what.formula);
    Product product{what, number, plain(mol, "mol"), plain_grams(grams), {}};
    if (is_gas(work.model, what))
        product.gas = plain(check::litres_of_gas(work.model, {what.chemical, what.form, grams}), "l", 3);
    return product;
}

std::optional<Refusal> stranger(const Reaction& reaction, const std::vector<Taken>& taken) {
    for (const Taken& one : taken) {
        const auto same = [&one](const Substance& what) { return is_same(one.what, what); };
        if (std::ranges::any_of(reaction.left, same)) continue;
        return Refusal{fmt::format("`{}` does not stand on the left of the reaction, so it takes no part.", one.name)};
    }
    return std::nullopt;
}

Reacted worked_out(Working work, const check::Reactants& all) {
    work.turns = turns_of(work);
    Reacted reacted;
    reacted.reaction = check::reaction_words(all, work.numbers);
    reacted.numbers_found = work.reaction.numbers.empty();
    for (std::size_t i = 0; i < work.reaction.left.size(); ++i) reacted.reagents.push_back(reagent(work, i));
    for (std::size_t i = 0; i < work.reaction.right.size(); ++i) reacted.products.push_back(product(work, i));
    reacted.lines = lines_of(reacted, work.taken, work.turns);
    add_cautions(work.model, reacted);
    return reacted;
}

}  // namespace

std::variant<Reacted, Refusal> react(const Model& model, Reaction reaction, const std::vector<Taken>& taken) {
    if (auto refusal = stranger(reaction, taken)) return *std::move(refusal);
    if (reaction.numbers.empty() && balances_in_ones(reaction))
        reaction.numbers.assign(reaction.left.size() + reaction.right.size(), 1);
    const check::Reactants all{reactants(reaction.left), reactants(reaction.right)};
    Numbers numbers = reaction.numbers.empty() ? found(all) : as_written(reaction, all);
    if (auto* refusal = std::get_if<Refusal>(&numbers)) return std::move(*refusal);
    return worked_out({model, reaction, taken, std::get<Coefficients>(std::move(numbers)), {}}, all);
}

}  // namespace scruple::plan
