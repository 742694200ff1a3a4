// SPDX-License-Identifier: MIT
// All that a tree says, as text without places: two files with the same tree text say the same.
#pragma once

#include <string>

#include "scruple/syntax/tree.hpp"

/// Runs of blanks count as one except in quoted names; numbers count by value.
[[nodiscard]] std::string tree_text(const scruple::text::Source& source, const scruple::syntax::Tree& tree);
