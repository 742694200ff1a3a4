// SPDX-License-Identifier: MIT
// Places as the protocol counts them: lines and UTF-16 code units from 0.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "scruple/text/source.hpp"

namespace scruple::server {

struct Position {
    std::size_t line = 0, character = 0;
    friend bool operator==(const Position&, const Position&) = default;
};

struct Range {
    Position start, end;
};

/// The lines of a text; LF, CRLF and CR end one. The text must outlive this, and be valid UTF-8.
class Positions {
  public:
    explicit Positions(std::string_view text);

    [[nodiscard]] Position position(std::uint32_t offset) const;
    [[nodiscard]] Range range(text::Span span) const { return {position(span.begin), position(span.end)}; }
    /// Past the end of a line or of the text is taken as that end; within a surrogate pair as its beginning.
    [[nodiscard]] std::uint32_t offset(Position position) const;
    [[nodiscard]] text::Span span(Range range) const;
    [[nodiscard]] std::size_t lines() const { return starts_.size(); }
    /// A line without its end.
    [[nodiscard]] text::Span line(std::size_t line) const;

  private:
    std::string_view text_;
    std::vector<std::uint32_t> starts_;
};

}  // namespace scruple::server
