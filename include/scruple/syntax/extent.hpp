// SPDX-License-Identifier: MIT
// How far a recipe goes.
#pragma once

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// The statement at which the block after a recipe begins, its own parts, baths and workings passed over; the number of
/// statements where none follows. `heading` is the statement of the recipe's heading.
[[nodiscard]] std::size_t end_of_recipe(const Tree& tree, std::size_t heading);

}  // namespace scruple::syntax
