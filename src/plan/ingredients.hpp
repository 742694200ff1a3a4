// SPDX-License-Identifier: MIT
// What so many ml of a solution are mixed from: one step down, other solutions left whole.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "ware.hpp"
#include "ways.hpp"

namespace scruple::plan {

/// One line's worth: ml of another solution, or a chemical.
struct Ingredient {
    check::Id solution = check::none;
    check::Exact ml;         ///< of the solution
    Amount amount;           ///< of the chemical, where solution is none
    std::string_view grade;  ///< of water
    std::string way;         ///< `for sodium metaborate (anhydrous) by conversion`; empty as a rule
};

struct Ingredients {
    std::vector<Ingredient> list;
    std::vector<std::string> warnings;  ///< what is not counted
};

/// Water is in it only where a grade is asked for; optional lines, unknown amounts and solvents are not.
/// Of a recipe with variants, the first. What is made by a conversion is counted as the reagents of the way that the
/// shelf makes the best.
[[nodiscard]] Ingredients ingredients_of(const check::Model& model, check::Id section, const check::Exact& ml,
                                         const Shelf& shelf = {});

/// ml of each solution in one ml of a section, all the way down; the section itself is 1.
[[nodiscard]] std::map<check::Id, check::Exact> shares_of(const check::Model& model, check::Id section);

/// A section and every solution under it, each before what it is made of; what contains itself is once in it.
[[nodiscard]] std::vector<check::Id> in_order_of_making(const check::Model& model,
                                                        const std::vector<check::Id>& sections);

/// Adds a sentence unless it has been said.
void say_once(std::vector<std::string>& said, const std::string& sentence);

}  // namespace scruple::plan
