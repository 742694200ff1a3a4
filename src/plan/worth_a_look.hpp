// SPDX-License-Identifier: MIT
// Which price lines a shopping list goes through, where there are more than anybody reads.
#pragma once

#include "offers.hpp"

namespace scruple::plan {

/// Of each thing wanted, the offers of it; all in one order.
using OffersOfEach = std::vector<std::vector<const Offer*>*>;

/// Leaves of each the 30 offers that give most for the money and the 30 that cost least, and of the shops 64, those
/// with the best offers first. Whether any was left out.
[[nodiscard]] bool keep_worth_a_look(const OffersOfEach& all);

}  // namespace scruple::plan
