// SPDX-License-Identifier: MIT
// Text as it came from disk, and places in it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scruple::text {

/// Bytes [begin, end) of one file. Lines and columns are worked out only when shown.
struct Span {
    std::uint32_t begin = 0;
    std::uint32_t end = 0;

    [[nodiscard]] constexpr bool empty() const { return begin == end; }
    friend constexpr bool operator==(Span, Span) = default;
};

using FileId = std::uint32_t;

/// One file of a workspace: its path as people see it, and its bytes.
struct Source {
    std::string path;
    std::string bytes;

    [[nodiscard]] std::string_view at(Span span) const {
        return std::string_view(bytes).substr(span.begin, span.end - span.begin);
    }
};

/// A place for people: both count from 1, and the column counts code points.
struct Position {
    std::size_t line = 1;
    std::size_t column = 1;
};

[[nodiscard]] Position position_of(const Source& source, std::uint32_t offset);

/// The whole line around an offset, without its line end.
[[nodiscard]] Span line_around(const Source& source, std::uint32_t offset);

/// The first byte that is not valid UTF-8 (or is NUL), or npos. A file with one is refused.
[[nodiscard]] std::size_t first_invalid_byte(std::string_view bytes);

/// How many columns a terminal gives to a piece of valid UTF-8 (wide scripts take two, marks none).
[[nodiscard]] std::size_t display_width(std::string_view utf8);

}  // namespace scruple::text
