// SPDX-License-Identifier: MIT
// One thing weighed or measured for another: another form, strength or assay of the same chemical, or a like one.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/figure.hpp"
#include "scruple/plan/react.hpp"

namespace scruple::plan {

enum class Kinship : std::uint8_t {
    same_species,   ///< the same chemical: exact by mole
    same_solution,  ///< another chemical that water makes the same of: exact
    like_function   ///< the same use and not the same thing: to be tested first
};

struct Weighing {
    std::string chemical, from;  ///< what the formula calls for, and its form and strength in words
    Figure called;
    std::string other, to;  ///< the chemical there is, and its form and strength
    Kinship kinship = Kinship::same_species;
    Figure as;                          ///< what to weigh, or to measure where the strength is one by volume
    std::optional<Figure> as_measured;  ///< ml of a liquid that may be weighed or measured
    check::Exact factor;                ///< `as` over `called`, exactly
    double mol = 0;                     ///< of what is called for
    std::vector<std::string> lines;     ///< the sum as a person does it again on paper
};

/// `there` is any amount of what is there: its form, strength and unit count, and not how much. Strengths and how pure
/// a form is sold are reckoned with on both sides. A Refusal where the two have no use in common.
[[nodiscard]] std::variant<Weighing, Refusal> weigh_as(const check::Model& model, const check::Addition& called,
                                                       const check::Addition& there);

}  // namespace scruple::plan
