// SPDX-License-Identifier: MIT
// Which solution a call means, and how much of it.
#pragma once

#include "asked.hpp"
#include "call.hpp"
#include "names.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::cli {

/// The amounts of --make, --films, --sheets, --area and --with. Throws Stop where they contradict each other.
[[nodiscard]] Asked asked_amounts(const Call& call);

/// Whether one of those says how much to make; `--at` alone does not.
[[nodiscard]] bool says_how_much(const Call& call);

/// The bench of --bench, or the only one there is; none where there is none. Throws Stop where it is not clear.
[[nodiscard]] check::Id asked_bench(const Call& call, const driver::Loaded& loaded);

/// The variant of --variant; throws Stop where the recipe has several and none is named.
[[nodiscard]] std::size_t asked_variant(const Call& call, const check::Recipe& recipe);

/// What those amounts come to in the workspace that was opened with them.
[[nodiscard]] plan::HowMuch how_much(const Call& call, const driver::Loaded& loaded);

/// How warm the solution is for its pH, where the call says so.
[[nodiscard]] std::optional<check::Exact> at_celsius(const Call& call, const driver::Loaded& loaded);

/// What --instead and --from-shelf ask for goes into the request. Throws Stop where none of the solutions asks for it.
void add_substitutions(const Call& call, const driver::Loaded& loaded, const Meant& meant, plan::CardRequest& request);

/// 2026-12-03; none where the calendar has no such day.
[[nodiscard]] std::optional<check::Day> typed_day(std::string_view text);
/// The day that an option names. Throws Stop where the calendar has no such day.
[[nodiscard]] std::optional<check::Day> asked_day(const Call& call, std::string_view option);
/// The day of --mixed.
[[nodiscard]] std::optional<check::Day> mixed_on(const Call& call);

/// Every solution of the recipe, whichever one was named.
[[nodiscard]] Meant whole(const driver::Loaded& loaded, const Meant& meant);

/// The one that an amount is meant for: the only one, or what the recipe itself makes. Throws Stop where there are only
/// parts, baths and workings to choose from.
[[nodiscard]] Meant one_solution(const driver::Loaded& loaded, const Meant& meant);

}  // namespace scruple::cli
