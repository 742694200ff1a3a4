// SPDX-License-Identifier: MIT
// The solutions of a text that are tried.
#pragma once

#include "scruple/plan/card.hpp"
#include "workspace.hpp"

namespace fuzz {

/// A solution, and one of the ways to ask for it: as written; half of it by the first bench, on a day, what the log has
/// not got met in other ways; for some films; as much as one gram of the first chemical allows; without that chemical.
/// Of the first few solutions, each in one way: which, `turn` says. A text of some thousand characters can have
/// hundreds.
[[nodiscard]] std::vector<scruple::plan::CardRequest> requests(const scruple::check::Model& model, std::size_t turn);

}  // namespace fuzz
