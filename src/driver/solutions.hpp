// SPDX-License-Identifier: MIT
// The solutions of one side of a comparison, each with what is said of it.
#pragma once

#include <map>

#include "scruple/driver/compare.hpp"

namespace scruple::driver {

struct Solution {
    std::string name;  ///< `Heron part A, variant soft`
    std::string key;   ///< the same, normal
    check::Id section = check::none;
    std::size_t variant = 0;
    std::string text;               ///< its statements and those of its recipe's heading, without comments
    std::vector<plan::Fact> facts;  ///< of a litre
    std::string why;                ///< why there are none
};

/// In the order of the workspace; `maker` is of its model. Forgets the log.
[[nodiscard]] std::vector<Solution> solutions_of(Side& side, plan::CardMaker& maker);

}  // namespace scruple::driver
