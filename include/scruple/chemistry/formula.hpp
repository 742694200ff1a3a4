// SPDX-License-Identifier: MIT
// Chemical formulas: atoms, charge, molar mass.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "scruple/quantity/exact.hpp"

namespace scruple::chemistry {

/// An element by its place in elements.inc (CIAAW 2021 abridged standard atomic weights).
using Element = std::uint8_t;

[[nodiscard]] std::string_view symbol(Element element);

/// What a formula counts: atoms by element, water of crystallisation apart, and charge.
/// Counts are exact and not whole numbers: CaSO4·½H2O holds 4 1/2 of oxygen.
struct Formula {
    struct Count {
        Element element;
        quantity::Exact atoms;
        friend bool operator==(const Count&, const Count&) = default;
    };
    std::vector<Count> atoms;  ///< sorted by element, water of crystallisation included; none is 0
    quantity::Exact water;     ///< molecules of water of crystallisation
    std::int32_t charge = 0;
    friend bool operator==(const Formula&, const Formula&) = default;
};

/// Why a formula could not be read, and the byte where it fails.
struct FormulaFault {
    enum class What : std::uint8_t {
        empty,
        unknown_element,
        unbalanced_bracket,
        unexpected,
        charge_both_ways,
        too_large
    };
    What what;
    std::size_t at = 0;
    std::string found;  ///< the piece that was not understood
};

/// Reads `Na2CO3·10H2O`, `(NH4)2S2O8`, `CO3-2`, `Fe+3`, `K4[Fe(CN)6]`. Hydrate dots: `·` `.` `*`; after one
/// a multiplier may stand: `10`, `1.5`, `1/2`, `½`, `1½`.
/// A charge is a sign and then digits (`CO3-2`), or superscripts (`CO₃²⁻`; subscripts count too).
/// Digits and then a sign read two ways, and are refused, where there are two of them or more (`CO32-`), or where
/// they count the whole ion (`Fe2+`, `[Fe(CN)6]4-`); the digit of `NH4+` can only count atoms.
[[nodiscard]] std::variant<Formula, FormulaFault> read_formula(std::string_view text);

/// The same less its water of crystallisation.
[[nodiscard]] Formula without_water(Formula formula);

/// g/mol, exact over the abridged weights.
[[nodiscard]] quantity::Exact molar_mass(const Formula& formula);
/// How far that may be off, as a share of it: the elements' shares by the root of the sum of squares.
[[nodiscard]] double molar_mass_off(const Formula& formula);

/// Atoms on the right less atoms on the left, per element, and charge; all zero when it balances.
struct Term {
    std::int32_t coefficient;
    Formula formula;
};
struct Imbalance {
    struct Off {
        Element element;
        quantity::Exact surplus;  ///< right less left; never 0
    };
    std::vector<Off> elements;
    std::int32_t charge = 0;
    [[nodiscard]] bool balanced() const { return elements.empty() && charge == 0; }
};
[[nodiscard]] Imbalance imbalance(const std::vector<Term>& left, const std::vector<Term>& right);

}  // namespace scruple::chemistry
