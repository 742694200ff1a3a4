// SPDX-License-Identifier: MIT
// What is said of a reaction beside its figures: the sum on paper, and what to mind.
#pragma once

#include "scruple/plan/react.hpp"

namespace scruple::plan {

/// From what was taken to moles, to what limits, to what is made.
[[nodiscard]] std::vector<std::string> lines_of(const Reacted& reacted, const std::vector<Taken>& taken,
                                                const check::Exact& turns);

/// Those that the library has of each substance, and those of a gas that comes off.
void add_cautions(const check::Model& model, Reacted& reacted);

}  // namespace scruple::plan
