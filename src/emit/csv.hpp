// SPDX-License-Identifier: MIT
// Rows of cells as RFC 4180 has them, fit for a spreadsheet.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scruple::emit::csv {

/// A cell of words. What a spreadsheet would take for a formula gets an apostrophe in front, so that it is read as
/// words: at the beginning, and behind what may part cells elsewhere (semicolon, bar, tab, line end).
[[nodiscard]] std::string words(std::string_view text);

/// With its line end; each cell is as `words` or a figure of ours gives it.
[[nodiscard]] std::string row(const std::vector<std::string>& cells);

}  // namespace scruple::emit::csv
