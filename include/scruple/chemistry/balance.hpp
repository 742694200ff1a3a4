// SPDX-License-Identifier: MIT
// The numbers that balance a reaction, exactly.
#pragma once

#include <vector>

#include "scruple/chemistry/formula.hpp"

namespace scruple::chemistry {

/// One number a substance: those on the left, then those on the right.
using Coefficients = std::vector<quantity::Exact>;

/// More substances than this are not balanced: no reaction of the trade has half as many.
inline constexpr std::size_t most_substances = 24;

/// All that balances a reaction: the null space of its matrix of elements and charge.
struct Balances {
    /// Each in the smallest whole numbers, none below 0, and none a mixture of the others; every balance with no
    /// number below 0 is a mixture of these. A substance whose number is 0 takes no part. Several ways mean that
    /// several reactions go on side by side, and that their proportion has to be said.
    std::vector<Coefficients> ways;
    /// How many ways there are when substances may change sides: the dimension of the null space.
    std::size_t freedom = 0;
    /// Where `freedom` is 1 and no way is left: the smallest whole numbers, below 0 for what would have to stand on the
    /// other side. Of the two signs, the one that turns fewer substances.
    Coefficients turned;
    /// Where there are two or three ways: of the mixtures that take every substance, the one in the smallest whole
    /// numbers (by their sum, none above 12). It need not be the right one: the numbers do not say the proportion.
    Coefficients together;

    /// The only way, where it takes every substance; nullptr otherwise.
    [[nodiscard]] const Coefficients* only() const;
};

/// Nothing is found where there are more than `most_substances`.
[[nodiscard]] Balances balances(const std::vector<Formula>& left, const std::vector<Formula>& right);

}  // namespace scruple::chemistry
