// SPDX-License-Identifier: MIT
// The names of a workspace: which one is meant, and which there are.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "call.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::cli {

/// What a RECIPE [SECTION] on the command line means.
struct Meant {
    check::Id recipe = check::none;
    std::vector<check::Id> sections;  ///< one where a section was named, or where there is but one
};

/// Each throws Stop with the nearest spelling, or with what there is, for a name that is not there.
[[nodiscard]] Meant find_solution(const driver::Loaded& loaded, const std::string& name);
[[nodiscard]] check::Id find_plan(const driver::Loaded& loaded, const std::string& name);
/// The plan that a call names; the only one there is need not be named.
[[nodiscard]] check::Id asked_plan(const Call& call, const driver::Loaded& loaded);
[[nodiscard]] check::Id find_printed(const driver::Loaded& loaded, const std::string& name);
[[nodiscard]] check::Id find_bench(const driver::Loaded& loaded, const std::string& name);
[[nodiscard]] check::Id find_chemical(const driver::Loaded& loaded, const std::string& name);
/// With the form that the name stands for (`washing soda`), or none.
[[nodiscard]] std::pair<check::Id, check::Id> find_chemical_in_form(const driver::Loaded& loaded,
                                                                    const std::string& name);
[[nodiscard]] std::size_t find_variant(const check::Recipe& recipe, const std::string& name);
[[nodiscard]] check::Id find_form(const check::Chemical& chemical, const std::string& name);

/// As they are shown, in the order of the workspace.
[[nodiscard]] std::vector<std::string> solution_names(const driver::Loaded& loaded);
[[nodiscard]] std::vector<std::string> plan_names(const driver::Loaded& loaded);
[[nodiscard]] std::vector<std::string> printed_names(const driver::Loaded& loaded);
[[nodiscard]] std::vector<std::string> bench_names(const driver::Loaded& loaded);
[[nodiscard]] std::vector<std::string> chemical_names(const driver::Loaded& loaded);

/// `soft, normal or hard`, each in backticks.
[[nodiscard]] std::string alternatives(const std::vector<std::string>& names);

}  // namespace scruple::cli
