// SPDX-License-Identifier: MIT
// Where a figure of a card comes from, in lines that a person can do again on paper.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// A sum and what it comes to (`5 g ÷ 198.106 g/mol` and `0.025239 mol`), or words alone where `result` is empty.
/// Printed results have five digits; what is reckoned with is exact.
struct WhyLine {
    std::string sum, result;
    std::string source{};                 ///< who says so; or
    std::optional<check::Place> place{};  ///< where it is written
};

struct Why {
    std::string solution, chemical;  ///< `Heron part A`, `sodium bicarbonate`
    std::string amid;  ///< `sodium ascorbate by conversion`, `by way of Heron part A`; empty for its own line
    Figure figure;     ///< as the card has it: what is weighed, or g/l of what it holds
    std::vector<WhyLine> lines;
    bool by_way = false;  ///< of a solution that it is made of: the figure is a share of what it holds
};

/// One for each place where the solution takes the chemical, in the order of the work; then one for each solution that
/// it is made of and that has some. A Refusal where there is none.
[[nodiscard]] std::variant<std::vector<Why>, Refusal> why(const check::Model& model, const CardRequest& request,
                                                          check::Id chemical);

}  // namespace scruple::plan
