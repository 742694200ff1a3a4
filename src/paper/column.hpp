// SPDX-License-Identifier: MIT
// The blocks that documents are made of, set to the width of a column.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "block.hpp"
#include "type.hpp"

namespace scruple::paper {

/// Something for a pencil: a box to tick, or a line to write on; or words that only stand beside those.
struct Field {
    enum class What : std::uint8_t { box, line, words } what = What::box;
    std::string label{};
    double line_points = 80;
    Style style = body;
};

/// One row of a table: cells from the second on stand at the right of their columns.
struct Row {
    std::vector<Words> cells;
    std::vector<double> widths;  ///< of the cells after the first, in points; the first has what is left
    bool ruled = true;
    bool box = false;    ///< a box to tick in front
    int most_lines = 0;  ///< of the first cell; 0: as many as it takes
};

class Column {
  public:
    Column(const Type& type, double width) : type_(type), width_(width) {}

    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] Column narrower(double by) const { return {type_, width_ - by}; }

    [[nodiscard]] Setting set(const Words& words) const { return type_.set(words); }
    [[nodiscard]] Block words(const Words& words, Align align = Align::left) const;
    [[nodiscard]] Block words(std::string_view text, Style style = body) const;
    /// What so many lines do not hold is left out.
    [[nodiscard]] Block shortened(std::string_view text, Style style, int most_lines) const;
    /// With a mark at the left, and the words hanging beside it.
    [[nodiscard]] Block marked(std::string_view mark, const Words& words) const;
    [[nodiscard]] Block heading(std::string_view text) const;
    [[nodiscard]] Block rule(double thickness) const;
    /// Side by side, and on a further line where there is no room.
    [[nodiscard]] Block fields(const std::vector<Field>& fields) const;
    [[nodiscard]] Block row(const Row& row) const;

  private:
    const Type& type_;
    double width_;
};

/// Below one another, never parted unless no sheet is long enough.
[[nodiscard]] Block stacked(Blocks blocks);
/// Moved to the right.
[[nodiscard]] Block indented(Block block, double by);
/// With a bar at its left, as high as it and the white above.
[[nodiscard]] Block barred(Block block);

inline constexpr double gap = 6;          ///< between what belongs together
inline constexpr double wide_gap = 14;    ///< between what does not
inline constexpr double box_side = 15;    ///< of a box to tick
inline constexpr double bar_indent = 12;  ///< of what stands beside a bar

}  // namespace scruple::paper
