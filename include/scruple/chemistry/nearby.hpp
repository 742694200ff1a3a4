// SPDX-License-Identifier: MIT
// Solutions that differ little from one that is worked out already.
#pragma once

#include "scruple/chemistry/speciation.hpp"

namespace scruple::chemistry {

/// What speciate() finds, in a third of its steps: the search begins from what a mixture came to whose species are the
/// first ones of this mixture, in their order.
[[nodiscard]] Speciation speciate_near(const Speciation& known, const Mixture& mixture);

}  // namespace scruple::chemistry
