// SPDX-License-Identifier: MIT
// The lines of a text, for looking up many places in it.
#pragma once

#include <string_view>
#include <vector>

#include "scruple/text/source.hpp"

namespace scruple::text {

/// Found once a file, in time with its length; a place is then found in time with the length of
/// its line, or of the way from the place asked for before in the same line. LF, CRLF and CR all
/// end a line. A byte order mark belongs to no line. The bytes must outlive this.
class Lines {
  public:
    explicit Lines(std::string_view bytes);

    /// An offset past the end is taken as the end.
    [[nodiscard]] Position position(std::uint32_t offset);
    [[nodiscard]] Span line_around(std::uint32_t offset) const;

  private:
    [[nodiscard]] std::size_t line_of(std::uint32_t offset) const;

    std::string_view bytes_;
    std::vector<std::uint32_t> starts_;
    std::uint32_t known_offset_ = 0;
    Position known_;
};

/// How often a byte stands in a text. By memchr, which looks at many bytes at a time.
[[nodiscard]] inline std::size_t count_of(char wanted, std::string_view bytes) {
    std::size_t count = 0;
    for (auto at = bytes.find(wanted); at != std::string_view::npos; at = bytes.find(wanted, at + 1)) ++count;
    return count;
}

}  // namespace scruple::text
