// SPDX-License-Identifier: MIT
// All that a statement's node holds, in one line that a person can check against the text.
#pragma once

#include <string>

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// `ingredient metol; 5 g; at 20 C`: what is absent is left out; a loose quantity is marked with `?`.
[[nodiscard]] std::string describe(const Statement& statement, const Tree& tree, const text::Source& source);

}  // namespace scruple::syntax
