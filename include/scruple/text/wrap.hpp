// SPDX-License-Identifier: MIT
// Words in lines of a width.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scruple::text {

/// `words` in lines of at most `width` columns, as a terminal counts them, parted at blanks (not at no-break ones); a
/// word longer than a line is cut. No words: one empty line. The words must be printable.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view words, std::size_t width);

}  // namespace scruple::text
