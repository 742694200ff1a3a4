// SPDX-License-Identifier: MIT
// A chemical made by a conversion: what goes in, what comes out beside it, what is given off.
#pragma once

#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// So many grams of a chemical in a form.
struct Share {
    check::Id chemical = check::none, form = check::none;
    check::Exact grams;
};

/// One conversion worked out for so much product.
struct Making {
    const check::Conversion* conversion = nullptr;
    Share product;                ///< as the recipe asks for it
    std::vector<Share> reagents;  ///< by the reaction, the excess included
    std::vector<Share> besides;   ///< what else stays in the solution: by-products and the excess; no water, no gas
    std::vector<Share> gases;     ///< products whose form is `gas`
    check::Exact water_ml;        ///< that its own lines take
};

/// By the reaction, mole for mole whatever form the product is asked for in; water_ml is the sum of the water lines.
/// Nothing where the product is not on the right.
[[nodiscard]] Making worked_out(const check::Model& model, const check::Conversion& conversion, const Share& product);

/// What an addition of the conversion measures (g, ml or mol, as addition.by): a reagent by the reaction, a `per`
/// line by its reagent, anything else as it stands. `line` is its index in the conversion's lines.
[[nodiscard]] check::Exact measure_in(const check::Model& model, const Making& making, const check::Addition& addition,
                                      std::uint32_t line);

/// Litres of a gas at 25 °C and 1 atm, as an ideal gas: 0.082057 l·atm/(mol·K) × 298.15 K = 24.465 l a mole.
[[nodiscard]] check::Exact litres_of_gas(const check::Model& model, const Share& gas);

}  // namespace scruple::plan
