// SPDX-License-Identifier: MIT
// The three streams the program was started with, and what they can show.
#pragma once

#include <cstddef>
#include <string_view>

namespace scruple::cli {

enum class Stream : int { out = 1, aside = 2 };

/// To be called first: no signal ends the program while it writes, and no file it opens can
/// take the number of a stream that was closed.
void secure_streams();

/// Whether the stack is allowed to be as large as drawing and searching take.
[[nodiscard]] bool has_stack();
/// KiB
inline constexpr std::size_t least_stack = 1024;

/// Colour is for terminals, and not where NO_COLOR is set to something (no-color.org).
[[nodiscard]] bool wants_colour(Stream stream);

[[nodiscard]] bool is_terminal(Stream stream);

/// Columns of the terminal, 80 at most; 80 where there is none.
[[nodiscard]] std::size_t width_of(Stream stream);

/// All of it. True where it was written or the reader has gone away; false (with errno) where it
/// could not be written.
[[nodiscard]] bool write_all(Stream stream, std::string_view text);

}  // namespace scruple::cli
