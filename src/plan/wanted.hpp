// SPDX-License-Identifier: MIT
// What a plan asks for: so much of each bath, on which days.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// What a bath that is kept meets on one day.
struct BathDay {
    check::Exact fill;     ///< ml that the tank must hold
    check::Exact carried;  ///< ml that go over into the next bath
    std::vector<check::Use> uses;
};

/// A solution that the plan asks for, and why.
struct Wanted {
    check::Id solution = check::none;
    check::Exact ml;
    std::vector<std::string> because;
    std::map<check::Day, check::Exact> by_day{};  ///< the same ml, by the day on which they must be there
    std::map<check::Day, BathDay> days{};         ///< of a bath that is kept from day to day
};

/// 0 where the plan has no days.
[[nodiscard]] check::Day first_day(const check::Plan& plan);

/// What the days of the plan take of each bath and replenisher, in the order of first use.
[[nodiscard]] std::vector<Wanted> wanted_by(const check::Model& model, const check::Plan& plan,
                                            std::vector<std::string>& warnings);

}  // namespace scruple::plan
