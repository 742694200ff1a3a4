// SPDX-License-Identifier: MIT
// Names that a chemist would know and that are written otherwise here.
#pragma once

#include <string>
#include <string_view>

#include "reader.hpp"

namespace scruple::check {

/// What to write for a formula (`KBr`), a form without its parentheses (`sodium sulfite anhydrous`) or a strength
/// without them (`acetic acid 28%`); empty where it is none of them.
[[nodiscard]] std::string nearly_named(Reader& reader, std::string_view written);

}  // namespace scruple::check
