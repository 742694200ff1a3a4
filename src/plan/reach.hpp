// SPDX-License-Identifier: MIT
// Everything that a solution is made of, through its parts and conversions: each once, in the order it is met.
#pragma once

#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

struct Reach {
    std::vector<check::Id> sections;   ///< itself first
    std::vector<check::Id> chemicals;  ///< water left out
    std::vector<const check::Conversion*> conversions;
};

[[nodiscard]] Reach reach_of(const check::Model& model, check::Id section);

/// Whether the solution reached from takes silver out of films and papers: called a fixer, or made with a thiosulfate.
[[nodiscard]] bool fixes(const check::Model& model, const Reach& reach);

}  // namespace scruple::plan
