// SPDX-License-Identifier: MIT
// Formulas in recipe text.
#pragma once

#include <optional>

#include "reader.hpp"

namespace scruple::check {

/// Reads a formula; reports one that cannot be read.
[[nodiscard]] std::optional<chemistry::Formula> read_formula(Reader& reader, text::Span span);

}  // namespace scruple::check
