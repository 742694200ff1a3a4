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
struct Formula {
    struct Count {
        Element element;
        std::int32_t atoms;
        friend bool operator==(const Count&, const Count&) = default;
    };
    std::vector<Count> atoms;    ///< sorted by element, water of crystallisation included
    std::int32_t water = 0;      ///< molecules of water of crystallisation, twice: NaBO2·½H2O holds 1
    std::int32_t charge = 0;
    friend bool operator==(const Formula&, const Formula&) = default;
};

/// Why a formula could not be read, and the byte where it fails.
struct FormulaFault {
    enum class What : std::uint8_t { empty, unknown_element, unbalanced_bracket, unexpected, charge_both_ways, too_large };
    What what;
    std::size_t at = 0;
    std::string found;  ///< the piece that was not understood
};

/// Reads `Na2CO3·10H2O`, `(NH4)2S2O8`, `CO3-2`, `Fe+3`, `K4[Fe(CN)6]`. Hydrate dots: `·` `.` `*`.
/// A charge is a sign and then digits (`CO3-2`), or superscripts (`CO₃²⁻`; subscripts count too);
/// `CO32-` is refused because it reads two ways.
[[nodiscard]] std::variant<Formula, FormulaFault> read_formula(std::string_view text);

/// g/mol, exact over the abridged weights.
[[nodiscard]] quantity::Exact molar_mass(const Formula& formula);

/// Atoms on the right less atoms on the left, per element, and charge; all zero when it balances.
struct Term {
    std::int32_t coefficient;
    Formula formula;
};
struct Imbalance {
    struct Off {
        Element element;
        std::int32_t surplus;  ///< right less left
    };
    std::vector<Off> elements;
    std::int32_t charge = 0;
    [[nodiscard]] bool balanced() const { return elements.empty() && charge == 0; }
};
[[nodiscard]] Imbalance imbalance(const std::vector<Term>& left, const std::vector<Term>& right);

}  // namespace scruple::chemistry
