// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace scruple::bench {

/// Runs the grammar over a file without an action: the least that reading it can take.
[[nodiscard]] bool follows_grammar(std::string_view text);

}  // namespace scruple::bench
