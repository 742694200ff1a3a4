// SPDX-License-Identifier: MIT
// Which rule of the grammar took a statement, told from its node: the one table between tree and grammar.
#pragma once

#include <string>

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// The name of the rule in grammar/scruple.peg, such as `pause` or `loose_ingredient`.
[[nodiscard]] std::string kind_of(const Statement& statement, const Tree& tree);

}  // namespace scruple::syntax
