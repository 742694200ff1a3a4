// SPDX-License-Identifier: MIT
// What one capacity line says of one use.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

[[nodiscard]] bool says(const std::vector<check::CapacityRule>& rules, check::CapacityRule::What what);

/// A volume, and the sum it came from: `6 × 250 ml`.
struct Measured {
    check::Exact ml;
    std::string how;
};

/// So many ml for each film, sheet or area of `per`; by area where the use is of another format. Nullopt where
/// an area is wanting.
[[nodiscard]] std::optional<Measured> volume_for(const check::Exact& ml, const check::PerUse& per,
                                                 const check::Use& use);
/// How many of what `per` names a use comes to, by count or else by area. Nullopt where an area is wanting.
[[nodiscard]] std::optional<check::Exact> times_of(const check::PerUse& per, const check::Use& use);
[[nodiscard]] bool same_format(const check::PerUse& per, const check::Use& use);

/// What the bath must measure so that it holds, for each use, what the volume lines (the floors among them where
/// `at_least`) ask of it or of a part of it. The largest of them; nullopt where none applies.
[[nodiscard]] std::optional<Measured> by_volume_lines(const check::Model& model, check::Id bath, const check::Use& use,
                                                      bool at_least);

/// Of the rules of one kind about the bath itself, the one whose format is nearest to the use; nullptr where there is
/// none.
[[nodiscard]] const check::CapacityRule* nearest_rule(const check::Model& model, check::Id bath, const check::Use& use,
                                                      check::CapacityRule::What what);

/// The share of a bath that `20 films 135 per 1 l` says is spent.
[[nodiscard]] std::optional<Measured> by_count_lines(const check::Model& model, check::Id bath, const check::Use& use);

}  // namespace scruple::plan
