// SPDX-License-Identifier: MIT
#include "column.hpp"

#include <algorithm>
#include <memory>
#include <numeric>
#include <utility>

namespace scruple::paper {
namespace {

constexpr double thin = 0.8;
constexpr double thick = 2.4;
constexpr double between_fields = 16;
constexpr double beside_mark = 16;
constexpr double beside_box = 6;
constexpr double least_cell = 40;

void line(cairo_t* ink, double x, double y, double to_x, double to_y, double thickness) {
    cairo_set_line_width(ink, thickness);
    cairo_move_to(ink, x, y);
    cairo_line_to(ink, to_x, to_y);
    cairo_stroke(ink);
}

void box(cairo_t* ink, double x, double y, double side) {
    cairo_set_line_width(ink, side / 12);
    cairo_rectangle(ink, x + side / 24, y + side / 24, side * 11 / 12, side * 11 / 12);
    cairo_stroke(ink);
}

/// Its lines, for a sheet that is too short for all of it.
Blocks lines_of(const Setting& setting) {
    Blocks lines;
    for (int i = 0; i < setting.lines(); ++i)
        lines.push_back({setting.height_of_line(i), 0, false,
                         [setting, i](cairo_t* ink, double x, double y) { setting.draw_line(ink, i, x, y); }});
    return lines;
}

Block block_of(const Setting& setting) {
    Block block{setting.height(), 0, false, [setting](cairo_t* ink, double x, double y) { setting.draw(ink, x, y); }};
    if (setting.lines() > 1) block.pieces = lines_of(setting);
    return block;
}

/// A field with the place that it has found in its row.
struct Placed {
    Field field;
    Setting label;
    double x = 0, y = 0;

    /// Boxes are as large beside the words as they are beside body type.
    [[nodiscard]] double scale() const { return field.style.points / body.points; }

    [[nodiscard]] double width() const {
        switch (field.what) {
            case Field::What::box:
                return (box_side + beside_box) * scale() + label.width();
            case Field::What::line:
                return label.width() + beside_box * scale() + field.line_points;
            case Field::What::words:
                return label.width();
        }
        return 0;
    }

    void draw(cairo_t* ink, double left, double top) const {
        const double baseline = top + y + label.baseline();
        double at = left + x;
        if (field.what == Field::What::box) {
            box(ink, at, baseline - (box_side - 2) * scale(), box_side * scale());
            at += (box_side + beside_box) * scale();
        }
        label.draw(ink, at, top + y);
        if (field.what != Field::What::line) return;
        at += label.width() + beside_box * scale();
        line(ink, at, baseline + 2, at + field.line_points, baseline + 2, thin);
    }
};

}  // namespace

Block Column::words(const Words& words, Align align) const {
    return block_of(type_.set(words, width_, align));
}

Block Column::words(std::string_view text, Style style) const {
    return words({{std::string(text), style}});
}

Block Column::shortened(std::string_view text, Style style, int most_lines) const {
    return block_of(type_.set({{std::string(text), style}}, width_, Align::left, most_lines));
}

Block Column::marked(std::string_view mark, const Words& words) const {
    const Setting sign = type_.set({{std::string(mark), strong}});
    Block block = indented(narrower(beside_mark).words(words), beside_mark);
    block.draw = [sign, rest = block.draw](cairo_t* ink, double x, double y) {
        sign.draw(ink, x, y);
        rest(ink, x, y);
    };
    if (!block.pieces.empty())
        block.pieces.front().draw = [sign, rest = block.pieces.front().draw](cairo_t* ink, double x, double y) {
            sign.draw(ink, x, y);
            rest(ink, x, y);
        };
    return block;
}

Block Column::heading(std::string_view text) const {
    Block block = words(text, {17, true});
    block.before = wide_gap;
    block.stays_with_next = true;
    return block;
}

Block Column::rule(double thickness) const {
    return {thickness, gap, true, [width = width_, thickness](cairo_t* ink, double x, double y) {
                line(ink, x, y + thickness / 2, x + width, y + thickness / 2, thickness);
            }};
}

Block Column::fields(const std::vector<Field>& fields) const {
    std::vector<Placed> placed;
    double x = 0, y = 0, height = 0;
    for (const Field& field : fields) {
        Placed one{field, type_.set({{field.label, field.style}}, width_ * 0.8), 0, 0};
        if (x > 0 && x + one.width() > width_) {
            x = 0;
            y = height + gap * one.scale();
        }
        one.x = x;
        one.y = y;
        x += one.width() + between_fields * one.scale();
        height = std::max(height, y + one.label.height());
        placed.push_back(std::move(one));
    }
    return {height, gap / 2, false, [placed](cairo_t* ink, double left, double top) {
                for (const Placed& one : placed) one.draw(ink, left, top);
            }};
}

/// The cells after the first stay on one line, and their columns are as wide as that takes.
Block Column::row(const Row& row) const {
    const double lead = row.box ? box_side + beside_box : 0;
    std::vector<Setting> cells(1, type_.set({}));
    std::vector<double> widths = row.widths;
    for (std::size_t i = 1; i < row.cells.size(); ++i) {
        cells.push_back(type_.set(row.cells[i]));
        widths[i - 1] = std::max(widths[i - 1], cells.back().width() + gap);
    }
    const double right = std::accumulate(widths.begin(), widths.end(), 0.0);
    const double rest = std::max(width_ - right - lead - gap, least_cell);
    cells.front() = type_.set(row.cells.front(), rest, Align::left, row.most_lines);
    double height = 0, baseline = 0;
    for (const Setting& cell : cells) baseline = std::max(baseline, cell.baseline());
    for (const Setting& cell : cells) height = std::max(height, baseline - cell.baseline() + cell.height());
    const double below = row.ruled ? 3 : 0;
    const auto draw = [=, width = width_, ruled = row.ruled](cairo_t* ink, double x, double y) {
        if (lead > 0) box(ink, x, y + baseline - box_side + 2, box_side);
        cells.front().draw(ink, x + lead, y + baseline - cells.front().baseline());
        double at = x + width - right;
        for (std::size_t i = 1; i < cells.size(); ++i) {
            at += widths[i - 1];
            cells[i].draw(ink, at - cells[i].width(), y + baseline - cells[i].baseline());
        }
        if (ruled) line(ink, x, y + height + below - thin, x + width, y + height + below - thin, thin);
    };
    return {height + below, 3, false, draw};
}

Block stacked(Blocks blocks) {
    if (blocks.size() == 1) return std::move(blocks.front());
    Block whole;
    for (std::size_t i = 0; i < blocks.size(); ++i) whole.height += blocks[i].height + (i == 0 ? 0 : blocks[i].before);
    if (!blocks.empty()) {
        whole.before = blocks.front().before;
        whole.stays_with_next = blocks.back().stays_with_next;
    }
    for (const Block& block : blocks) {
        if (block.pieces.empty())
            whole.pieces.push_back(block);
        else
            whole.pieces.insert(whole.pieces.end(), block.pieces.begin(), block.pieces.end());
    }
    whole.draw = [blocks = std::move(blocks)](cairo_t* ink, double x, double y) {
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            if (i > 0) y += blocks[i].before;
            blocks[i].draw(ink, x, y);
            y += blocks[i].height;
        }
    };
    return whole;
}

Block indented(Block block, double by) {
    block.draw = [by, inner = std::move(block.draw)](cairo_t* ink, double x, double y) { inner(ink, x + by, y); };
    for (Block& piece : block.pieces) piece = indented(std::move(piece), by);
    return block;
}

Block barred(Block block) {
    const double above = block.before;
    block = indented(std::move(block), bar_indent);
    const auto bar = [](Block& one, double from) {
        one.draw = [from, height = one.height, inner = std::move(one.draw)](cairo_t* ink, double x, double y) {
            line(ink, x + thick / 2, y - from, x + thick / 2, y + height, thick);
            inner(ink, x, y);
        };
    };
    bar(block, above);
    for (Block& piece : block.pieces) bar(piece, piece.before);
    return block;
}

}  // namespace scruple::paper
