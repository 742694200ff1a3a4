// SPDX-License-Identifier: MIT
// Text from a file, made fit for a terminal, a card or a label.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace scruple::text {

/// One line of text in which nothing acts: terminal escapes and other control characters come as
/// their pictures (␛ ␊), direction controls and other unseen characters as `‹U+202E›`, bytes that
/// are not UTF-8 as `‹byte FF›`, a tab as a blank. The joiners and variation selectors that some scripts need stay.
[[nodiscard]] std::string printable(std::string_view bytes);

/// The same of several lines, whose ends stay.
[[nodiscard]] std::string printable_lines(std::string_view bytes);

/// The first character at or after `from` that `printable` would show in another way, but for tabs, line ends and a
/// byte order mark in front; npos where there is none. Of valid UTF-8.
[[nodiscard]] std::size_t first_unseen(std::string_view utf8, std::size_t from = 0);

/// A JSON text in which the same characters stand as escapes (`\u202e`), so that it means what it did.
[[nodiscard]] std::string with_unseen_escaped(std::string_view json);

/// At most `most` code points (one or more), the last of them `…` where something was left out.
[[nodiscard]] std::string shortened(std::string_view bytes, std::size_t most);

}  // namespace scruple::text
