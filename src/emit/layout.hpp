// SPDX-License-Identifier: MIT
// Plain text in lines that fit a terminal or a sheet of paper: widths as a terminal counts them,
// hanging indents, and things at the right edge. Everything given is made printable first.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/emit/emit.hpp"

namespace scruple::emit {

/// `text` in lines of at most `width` columns, parted at blanks, but not after a number and not at no-break
/// ones; a word longer than a line is cut. No text: one empty line.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

[[nodiscard]] std::string padded_right(std::string_view text, std::size_t width);
[[nodiscard]] std::string padded_left(std::string_view text, std::size_t width);

/// An amount in a column: numbers end in one place, and units begin in one.
struct AmountColumn {
    std::size_t number = 0, unit = 0;  ///< columns
    void make_room(std::string_view number_text, std::string_view unit_text);
    [[nodiscard]] std::size_t width() const { return number + 1 + unit; }
    [[nodiscard]] std::string line(std::string_view number_text, std::string_view unit_text) const;
};

/// Between things side by side on one line: wider than a blank, and still a place to break.
inline constexpr std::string_view wide_gap = "\u00A0\u00A0 ";

/// A page of text that grows downwards.
class Sheet {
  public:
    explicit Sheet(const TextStyle& style);

    /// At most one after another.
    void blank();
    /// Two blank lines, the words in capitals at the margin, a blank line.
    void heading(std::string_view words);
    /// Words behind `lead`, wrapped to hang below their own beginning.
    void item(std::string_view lead, std::string_view words);
    /// The same, with `right` at the right edge of the first line, or on a line of its own below where the
    /// words would be left with too little room.
    void item(std::string_view lead, std::string_view words, std::string_view right);
    /// Words that begin `columns` from the margin.
    void indented(std::size_t columns, std::string_view words) { item(std::string(columns, ' '), words); }

    [[nodiscard]] std::size_t width() const { return width_; }  ///< between the margins
    [[nodiscard]] std::string take() { return std::move(text_); }

  private:
    void line(std::string_view content);

    std::size_t width_;
    std::string text_;
};

}  // namespace scruple::emit
