// SPDX-License-Identifier: MIT
// What atoms weigh.
#pragma once

#include "scruple/chemistry/formula.hpp"

namespace scruple::chemistry {

/// g/mol: the abridged standard atomic weights 2021 (CIAAW) of elements.inc.
[[nodiscard]] const quantity::Exact& atomic_weight(Element element);
/// g/mol: how far that may be off, by where on earth the element comes from.
[[nodiscard]] double atomic_weight_off(Element element);

}  // namespace scruple::chemistry
