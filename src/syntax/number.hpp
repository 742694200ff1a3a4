// SPDX-License-Identifier: MIT
// The value of a number as it is written.
#pragma once

#include <string_view>

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// `0.7`, `1 1/2`, `½`, `−3`: exact; loose where it does not fit the words of a Number.
/// `text` must be what the grammar calls a number.
[[nodiscard]] Number read_number(std::string_view text, Span span);

}  // namespace scruple::syntax
