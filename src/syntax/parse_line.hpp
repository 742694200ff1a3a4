// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "draft.hpp"

namespace scruple::syntax {

/// One line, without its end; it stands in the text that the draft counts from.
void parse_line(std::string_view line, Draft& draft);

}  // namespace scruple::syntax
