// SPDX-License-Identifier: MIT
// What the program says about itself.
#pragma once

#include <string>
#include <string_view>

#include "blocks.hpp"
#include "commands.hpp"
#include "scruple/check/sayings.hpp"
#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::cli {

/// Words in lines of at most `width` columns, each behind `indent` blanks; a line end in the words is kept.
[[nodiscard]] std::string paragraph(std::string_view words, std::size_t indent, std::size_t width);

[[nodiscard]] std::string overview_screen(std::size_t width);
/// The overview, then every topic there is help for.
[[nodiscard]] std::string topics_screen(std::size_t width);
[[nodiscard]] std::string command_screen(const CommandInfo& command, std::size_t width);
[[nodiscard]] std::string block_screen(const BlockInfo& block, std::size_t width);
/// How a line with this word is written.
[[nodiscard]] std::string line_screen(const check::Saying& saying, std::size_t width);
[[nodiscard]] std::string kind_screen(const diagnostics::KindInfo& kind, std::size_t width);

}  // namespace scruple::cli
