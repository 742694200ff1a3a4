// SPDX-License-Identifier: MIT
// The table of elements.inc, as the sources of this rung use it.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "scruple/chemistry/formula.hpp"
#include "scruple/chemistry/weights.hpp"

namespace scruple::chemistry {

inline constexpr std::size_t element_count = 0
#define SCRUPLE_ELEMENT(symbol, weight, give_or_take) +1
#include "scruple/chemistry/elements.inc"
#undef SCRUPLE_ELEMENT
    ;

/// A sum over all elements.
using Tally = std::array<quantity::Exact, element_count>;

[[nodiscard]] std::optional<Element> find_element(std::string_view symbol);

}  // namespace scruple::chemistry
