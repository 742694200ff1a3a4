// SPDX-License-Identifier: MIT
// The cheapest packs for an order in which some shops are bought from until they send it free.
#pragma once

#include "pack_selection.hpp"

namespace scruple::plan {

/// The shops that an order goes to: all of them, and those that are bought from until they send it free.
struct PackOrder {
    ShopSet from = 0, until_free = 0;
    Exact postage;  ///< of the others
    Exact fills;    ///< for how much the latter are bought from at least
};

/// Offers `best` what is better than it. False where patience ended before all was gone through.
[[nodiscard]] bool fill_up_to_free(const PackProblem& problem, Covers& covers, const PackOrder& order,
                                   BestSelection& best, PackPatience& patience);

}  // namespace scruple::plan
