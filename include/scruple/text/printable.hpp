// SPDX-License-Identifier: MIT
// Text from a file, made fit for a terminal, a card or a label.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace scruple::text {

/// One line of text in which nothing acts: terminal escapes and other control characters come as
/// their pictures (␛ ␊), direction controls and other unseen characters as `‹U+202E›`, bytes that
/// are not UTF-8 as `‹byte FF›`, a tab as a blank. The joiners that some scripts need stay.
[[nodiscard]] std::string printable(std::string_view bytes);

/// At most `most` code points (one or more), the last of them `…` where something was left out.
[[nodiscard]] std::string shortened(std::string_view bytes, std::size_t most);

}  // namespace scruple::text
