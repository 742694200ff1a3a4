// SPDX-License-Identifier: MIT
#include "chart.hpp"

#include <algorithm>
#include <utility>

namespace scruple::paper {
namespace {

constexpr double bar_height = 15;
constexpr double between_bars = 5;
constexpr double stripe = 5;

double place(double x, double width, int at, int minutes) {
    return x + width * at / std::max(minutes, 1);
}

void stripes(cairo_t* ink, double left, double top, double width) {
    cairo_save(ink);
    cairo_rectangle(ink, left, top, width, bar_height);
    cairo_clip(ink);
    cairo_set_line_width(ink, 1);
    for (double at = left - bar_height; at < left + width; at += stripe) {
        cairo_move_to(ink, at, top + bar_height);
        cairo_line_to(ink, at + bar_height, top);
    }
    cairo_stroke(ink);
    cairo_restore(ink);
    cairo_set_line_width(ink, 1);
    cairo_rectangle(ink, left + 0.5, top + 0.5, std::max(width - 1, 0.5), bar_height - 1);
    cairo_stroke(ink);
}

void upright(cairo_t* ink, double x, double from, double to) {
    cairo_set_line_width(ink, 0.5);
    cairo_move_to(ink, x, from);
    cairo_line_to(ink, x, to);
    cairo_stroke(ink);
}

void stretch(cairo_t* ink, const Stretch& one, double left, double right, double top) {
    if (!one.hands) return stripes(ink, left, top, right - left);
    // A hair of white parts one step from the next.
    cairo_rectangle(ink, left, top, std::max(right - left - 0.7, 0.7), bar_height);
    cairo_fill(ink);
}

Block bar_block(const Column& column, const Bar& bar, const std::vector<Tick>& ticks, int minutes) {
    const Setting label = column.set({{bar.label}});
    const double height = label.height() + bar_height;
    return {height, between_bars, false, [=, width = column.width()](cairo_t* ink, double x, double y) {
                label.draw(ink, x, y);
                const double top = y + label.height();
                for (const Tick& tick : ticks)
                    upright(ink, place(x, width, tick.at, minutes), top - 1, top + bar_height + 1);
                cairo_set_line_width(ink, 1);
                cairo_move_to(ink, place(x, width, bar.from, minutes), top + bar_height / 2);
                cairo_line_to(ink, place(x, width, bar.to, minutes), top + bar_height / 2);
                cairo_stroke(ink);
                for (const Stretch& one : bar.stretches)
                    stretch(ink, one, place(x, width, one.from, minutes), place(x, width, one.to, minutes), top);
            }};
}

Block axis(const Column& column, const std::vector<Tick>& ticks, int minutes) {
    std::vector<std::pair<int, Setting>> labels;
    labels.reserve(ticks.size());
    for (const Tick& tick : ticks) labels.emplace_back(tick.at, column.set({{tick.label}}));
    const double height = labels.empty() ? 0 : labels.front().second.height() + 4;
    return {height, between_bars, false, [=, width = column.width()](cairo_t* ink, double x, double y) {
                double free = x;
                for (const auto& [at, label] : labels) {
                    const double line = place(x, width, at, minutes);
                    upright(ink, line, y, y + 3);
                    const double left = std::clamp(line - label.width() / 2, x, x + width - label.width());
                    if (left < free) continue;  // No two labels over one another.
                    label.draw(ink, left, y + 4);
                    free = left + label.width() + 6;
                }
            }};
}

}  // namespace

Block chart(const Column& column, const std::vector<Bar>& bars, const std::vector<Tick>& ticks, int minutes) {
    Blocks all;
    all.reserve(bars.size() + 1);
    for (const Bar& bar : bars) all.push_back(bar_block(column, bar, ticks, minutes));
    all.push_back(axis(column, ticks, minutes));
    return stacked(std::move(all));
}

}  // namespace scruple::paper
