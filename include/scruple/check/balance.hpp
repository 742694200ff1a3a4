// SPDX-License-Identifier: MIT
// A reaction in words: what is off, and what would balance it.
#pragma once

#include <string>
#include <vector>

#include "scruple/chemistry/balance.hpp"

namespace scruple::check {

/// One substance of a reaction, by the name it is shown under.
struct Reactant {
    std::string name{};
    chemistry::Formula formula{};
};

struct Reactants {
    std::vector<Reactant> left{}, right{};
};

/// `too many on the left: 3 H; too many on the right: 1 C, 1 Na; the charge is off by 1`
[[nodiscard]] std::string imbalance_words(const chemistry::Imbalance& off);

/// `borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water`: ones and what takes no
/// part (0) are left out. One number a substance, left then right; a number below 0 puts it on the other side.
[[nodiscard]] std::string reaction_words(const Reactants& reactants, const chemistry::Coefficients& numbers);

/// What to write in place of a reaction that does not balance: the one that does, each of several, or why none does.
[[nodiscard]] std::string balance_offer(const Reactants& reactants);

[[nodiscard]] chemistry::Balances balances(const Reactants& reactants);

}  // namespace scruple::check
