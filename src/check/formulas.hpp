// SPDX-License-Identifier: MIT
// Formulas in recipe text.
#pragma once

#include <optional>

#include "reader.hpp"

namespace scruple::check {

/// Reads a formula; reports one that cannot be read.
[[nodiscard]] std::optional<chemistry::Formula> read_formula(Reader& reader, text::Span span);

/// The same without its water of crystallisation.
[[nodiscard]] chemistry::Formula without_water(chemistry::Formula formula);

/// `too many on the left: 3 H; too many on the right: 1 C`, of an imbalance.
[[nodiscard]] std::string what_is_off(const chemistry::Imbalance& off);

}  // namespace scruple::check
