// SPDX-License-Identifier: MIT
// One ingredient line of recipe text, written anew where it stands.
#pragma once

#include <vector>

#include "edits.hpp"
#include "scruple/plan/swap.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::emit {

/// The edits for one line, its amounts multiplied by `factor`.
void add_rewriting(const text::Source& source, const syntax::Tree& tree, const plan::Rewriting& rewriting,
                   const quantity::Exact& factor, std::vector<Edit>& edits);

}  // namespace scruple::emit
