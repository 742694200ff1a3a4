// SPDX-License-Identifier: MIT
// A chemical made by a conversion: what goes in, what comes out beside it, what is given off.
#pragma once

#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// So many grams of a chemical in a form.
struct Share {
    Id chemical = none, form = none;
    Exact grams;
};

/// One conversion worked out for so much product.
struct Making {
    const Conversion* conversion = nullptr;
    Share product;                ///< as the recipe asks for it
    std::vector<Share> reagents;  ///< by the reaction, the excess included
    std::vector<Share> besides;   ///< what else stays in the solution: by-products and the excess; no water, no gas
    std::vector<Share> gases;     ///< products whose form is `gas`
    Exact water_ml;               ///< that its own lines take
};

/// The conversion that a line is made by: the one that was settled on, else the first that makes it, from what the line
/// names where it names something: the user's own before the library's, one for the very form before another. nullptr
/// where there is none.
[[nodiscard]] const Conversion* conversion_for(const Model& model, const Addition& addition);

/// By the reaction, mole for mole whatever form the product is asked for in; water_ml is the sum of the water lines.
/// Nothing where the product is not on the right.
[[nodiscard]] Making making_of(const Model& model, const Conversion& conversion, const Share& product);

/// What an addition of the conversion measures (g, ml or mol, as addition.by): a reagent by the reaction, a `per`
/// line by its reagent, anything else as it stands. `line` is its index in the conversion's lines.
[[nodiscard]] Exact measure_in(const Model& model, const Making& making, const Addition& addition, std::uint32_t line);

/// By what its form is called.
[[nodiscard]] bool is_gas(const Form& form);

/// At 25 °C and 1 atm, as an ideal gas.
[[nodiscard]] const Exact& litres_a_mole_of_gas();
/// Litres of a gas at 25 °C and 1 atm, as an ideal gas: 0.082057 l·atm/(mol·K) × 298.15 K = 24.465 l a mole.
[[nodiscard]] Exact litres_of_gas(const Model& model, const Share& gas);

}  // namespace scruple::check
