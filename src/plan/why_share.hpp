// SPDX-License-Identifier: MIT
// What a solution holds of a chemical by way of the solutions that it is made of.
#pragma once

#include <vector>

#include "why_lines.hpp"

namespace scruple::plan {

/// So much of a solution, made in a variant of its recipe.
struct Portion {
    check::Id section = check::none;
    std::size_t variant = 0;
    check::Exact ml{};
};

struct Shares {
    std::vector<Why> found;
    bool any_too_thin = false;  ///< a way that was not followed, as not a molecule of it is in a litre
};

/// One for each line of those solutions that has the chemical, down to what is weighed, as grams in a litre of the
/// batch. Nothing is rounded to an instrument: it is weighed there, and not here.
[[nodiscard]] Shares shares_in(const check::Model& model, const Portion& batch, check::Id chemical);

}  // namespace scruple::plan
