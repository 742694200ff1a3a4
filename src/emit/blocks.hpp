// SPDX-License-Identifier: MIT
// Which lines of a file belong together, comments among them.
#pragma once

#include <vector>

#include "scruple/syntax/tree.hpp"

namespace scruple::emit {

[[nodiscard]] bool is_comment(const syntax::Statement& statement);
[[nodiscard]] const syntax::Heading* heading_of(const syntax::Statement& statement);

/// The first of the comment lines that stand right above a heading, without a blank line between, and
/// so belong to it; the heading itself where there are none.
[[nodiscard]] std::size_t with_comments_above(const syntax::Tree& tree, std::size_t heading);

/// The first byte of the line in which `offset` stands.
[[nodiscard]] std::uint32_t line_start(const text::Source& source, std::uint32_t offset);
/// Where a statement, or the comment that is all of it, begins.
[[nodiscard]] std::uint32_t begin_of(const syntax::Statement& statement);

/// Where a line is set when recipe text is laid out anew.
struct Setting {
    bool flush = false;         ///< at the margin, not indented
    bool blank_before = false;  ///< a blank line above it
};

/// One for each statement. Headings are flush with a blank line above; comments right above one go with it.
/// Paragraphs of comments between two blocks stay flush where the author set them so.
[[nodiscard]] std::vector<Setting> settings(const text::Source& source, const syntax::Tree& tree);

}  // namespace scruple::emit
