// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// What a conversion leaves in the solution beside so many grams of its product, in g and mol. `give_or_take` is how
/// many times as far off each is as the product: an excess is what is over of its reagent, and off by as many grams.
[[nodiscard]] std::vector<Content> leftovers_of(const Model& model, const Addition& product, const Exact& grams);

}  // namespace scruple::check
