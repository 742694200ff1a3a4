// SPDX-License-Identifier: MIT
// What is mixed on which day for the baths of a plan, and how much of it: what the calendar shows and the shopping
// list buys for.
#pragma once

#include <string>
#include <vector>

#include "bottle_rack.hpp"
#include "wanted.hpp"

namespace scruple::plan {

/// So much of one solution, mixed at once.
struct MixedBatch {
    check::Day day = 0;
    check::Exact ml;
    check::Exact beyond;  ///< of it, ml that its uses do not take
    std::vector<check::Day> used_on;
    Bottling bottles;    ///< empty where it is used on the day, or the bench says no sizes
    std::string raised;  ///< why there are any; else empty
};

struct MixedSolution {
    check::Id solution = check::none;
    bool weighed = false;  ///< a chemical goes into it, and not solutions and water alone
    bool keeps = false;    ///< longer than the day on which it is mixed
    check::Exact held;     ///< ml of what is on hand that is used
    std::vector<MixedBatch> batches;
};

struct MixPlan {
    std::vector<MixedSolution> solutions;  ///< each before what it is made of
    bool proven = true;                    ///< that no other days and mixings are fewer
    std::vector<std::string> notes;        ///< what is passed over, bottles that are wanting, what is not proven

    [[nodiscard]] const MixedSolution* of(check::Id solution) const;
};

/// `bench`: whose bottles must do; none: there are bottles enough.
[[nodiscard]] MixPlan plan_mixing(const check::Model& model, const std::vector<Wanted>& wanted, check::Day first,
                                  check::Id bench);

}  // namespace scruple::plan
