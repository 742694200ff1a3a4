// SPDX-License-Identifier: MIT
// What is on hand, and taking from it. Nothing in it is ever less than nothing.
#pragma once

#include <map>
#include <vector>

#include "ware.hpp"

namespace scruple::plan {

struct Stock {
    std::map<Ware, check::Exact> wares;           ///< g or ml, as the ware says
    std::map<check::Id, check::Exact> solutions;  ///< ml
};

/// What was taken of one ware, and how much of the asked one that stands for.
struct Taking {
    Ware from;
    check::Exact measure;
    check::Exact as_asked;
};

[[nodiscard]] check::Exact held(const Stock& stock, const Ware& ware);
[[nodiscard]] check::Exact held(const Stock& stock, check::Id solution);

/// As much of the asked measure as there is of exactly this; gives what was taken.
check::Exact take_own(Stock& stock, const Amount& asked);
check::Exact take_solution(Stock& stock, check::Id solution, const check::Exact& ml);

/// As much of it as other forms and strengths of the chemical on hand can stand for.
std::vector<Taking> take_others(const check::Model& model, Stock& stock, const Amount& asked);

/// Its own first, then the others; gives what is wanting.
check::Exact take(const check::Model& model, Stock& stock, const Amount& asked);

}  // namespace scruple::plan
