// SPDX-License-Identifier: MIT
// What jars cost, followed into what was mixed from them.
#pragma once

#include <set>

#include "lots.hpp"

namespace scruple::plan {

/// Sums by currency, and what has no price: it is in no sum.
struct Worth {
    std::map<std::string_view, check::Exact> sums;
    std::set<Stocked> unpriced;
};

/// Of lots in all their made amount; the others are not worked out.
[[nodiscard]] std::map<LotId, Worth> worth_of(const check::Model& model, const Lots& all,
                                              const std::vector<LotId>& wanted);

}  // namespace scruple::plan
