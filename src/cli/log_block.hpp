// SPDX-License-Identifier: MIT
// The `log` block that a new line belongs into, and the file's text with the line in it.
#pragma once

#include <optional>
#include <string>

#include "scruple/driver/driver.hpp"

namespace scruple::cli {

struct LogBlock {
    text::FileId file = 0;
    std::uint32_t first = 0, last = 0;        ///< of the tree's statements: the heading, and the last of its block
    const check::LogEntry* latest = nullptr;  ///< of its lines
};

/// Of the blocks of the workspace, or of one file of it, the one with the latest line. Throws Stop where there is none.
[[nodiscard]] LogBlock find_log_block(const driver::Loaded& loaded, const std::optional<std::string>& file);

/// A line of the log, in the parts that stand in columns.
struct NewLine {
    std::string date, verb, rest, comment;
};

/// As the last line of the block has it: its indentation, its columns.
[[nodiscard]] std::string laid_out(const driver::Loaded& loaded, const LogBlock& block, const NewLine& line);

struct WithLine {
    std::string text;
    std::size_t line_number = 0;
};
/// The file's text with the line at the end of the block, in the line ends that the file has.
[[nodiscard]] WithLine with_line(const driver::Loaded& loaded, const LogBlock& block, const std::string& line);

}  // namespace scruple::cli
