// SPDX-License-Identifier: MIT
// What a mole of one chemical is worth of another.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "scruple/plan/weigh.hpp"

namespace scruple::plan {

struct Kin {
    Kinship how = Kinship::same_species;
    check::Exact moles = 1;  ///< of the one there is, for a mole of the one that is called for
    std::string because;     ///< `as much B in both`; empty for the same chemical
    /// Moles of sodium or potassium hydroxide that the one there is brings too much, for a mole of what is called for
    /// (below 0: too little); with it taken out (or put in) the solution is the same.
    check::Exact alkali;
    std::string alkali_of;  ///< `Na`; empty where no hydroxide makes them the same
};

/// By what is left when water and hydrogen ions do not count (chemistry::Cores). What neither shares but for sodium,
/// potassium, lithium or ammonium stands mole for mole. A Refusal where they are not of like function (likeness_of).
[[nodiscard]] std::variant<Kin, Refusal> kin_of(const check::Model& model, check::Id called, check::Id there);

}  // namespace scruple::plan
