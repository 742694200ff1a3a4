// SPDX-License-Identifier: MIT
#pragma once

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// Reads a whole file. Never fails: every line that holds anything becomes a statement, and what
/// is loose, bad or unread is marked as such for the checker to explain. `source.bytes` must be
/// valid UTF-8 without NUL (see text::first_invalid_byte) and at most `longest_text` bytes.
[[nodiscard]] Tree parse(const text::Source& source);
/// The same into a tree that is there, in place of what it holds: it need not grow anew.
void parse(const text::Source& source, Tree& tree);

/// A file past this is refused before it is read.
inline constexpr std::size_t longest_text = 16u << 20;

/// A line of more characters than this is `Unread`.
inline constexpr std::size_t longest_line = 4096;

}  // namespace scruple::syntax
