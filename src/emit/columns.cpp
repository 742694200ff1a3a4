// SPDX-License-Identifier: MIT
#include "columns.hpp"

#include <algorithm>

#include "scruple/text/source.hpp"

namespace scruple::emit {
namespace {

/// How wide a column is: at least so much, more where a cell of the block needs it, but no more than the
/// most; a cell past that pushes its own row.
struct Width {
    Shape shape;
    std::size_t cell, least, gap, most;
};
// Wide enough for almost every name, so that adding a long one seldom moves the lines around it.
constexpr std::array widths = {Width{Shape::fact, 0, 11, 1, 11},   Width{Shape::form, 0, 11, 1, 11},
                               Width{Shape::form, 1, 16, 2, 40},   Width{Shape::ingredient, 0, 36, 2, 56},
                               Width{Shape::price, 0, 0, 3, 56},   Width{Shape::price, 1, 0, 3, 0},
                               Width{Shape::process, 0, 0, 3, 56}, Width{Shape::log, 0, 0, 1, 0},
                               Width{Shape::log, 1, 11, 1, 11},    Width{Shape::plan, 0, 22, 3, 22}};

const Width* width_of(Shape shape, std::size_t cell) {
    for (const Width& width : widths)
        if (width.shape == shape && width.cell == cell) return &width;
    return nullptr;
}

std::size_t index_of(const Width* width) {
    return static_cast<std::size_t>(width - widths.data());
}

}  // namespace

void Columns::make_room(const SetRow& row) {
    static_assert(widths.size() == all);
    for (std::size_t i = 0; i + 1 < row.cells.size(); ++i) {
        const Width* width = width_of(row.shape, i);
        if (width == nullptr) continue;
        const std::size_t wanted = text::display_width(row.cells[i]) + width->gap;
        std::size_t& column = columns_[index_of(width)];
        column = std::max(column, wanted > width->most ? width->least : std::max(width->least, wanted));
    }
}

std::string Columns::line(const SetRow& row) const {
    std::string line;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        line += row.cells[i];
        const Width* width = i + 1 < row.cells.size() ? width_of(row.shape, i) : nullptr;
        if (width == nullptr) continue;
        const std::size_t column = columns_[index_of(width)];
        const std::size_t used = text::display_width(row.cells[i]);
        line.append(std::max(width->gap, column > used ? column - used : 0), ' ');
    }
    return line;
}

}  // namespace scruple::emit
