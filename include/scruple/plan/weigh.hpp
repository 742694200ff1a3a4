// SPDX-License-Identifier: MIT
// One form of a chemical weighed for another.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

struct Weighing {
    std::string chemical;
    std::string from, to;  ///< the forms
    Figure grams, as;      ///< what the formula calls for, and what to weigh instead; plain figures
    check::Exact factor;   ///< molar mass of `to` over that of `from`, exactly
    double mol = 0;
    std::vector<std::string> lines;  ///< the sum as a person does it again on paper
};

/// Grams of `to` that hold as many moles as `grams` of `from`. Strengths as sold are left aside: both are the
/// pure form. A Refusal where a form is not one of the chemical's.
[[nodiscard]] std::variant<Weighing, Refusal> weigh_as(const check::Model& model, check::Id chemical, check::Id from,
                                                       const check::Exact& grams, check::Id to);

}  // namespace scruple::plan
