// SPDX-License-Identifier: MIT
// Blocks laid out on sheets, and the sheets drawn.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "block.hpp"
#include "scruple/paper/paper.hpp"
#include "type.hpp"

namespace scruple::paper {

inline constexpr double points_per_mm = 72 / 25.4;

/// One document that begins a sheet of its own.
struct Document {
    std::string title;  ///< at the head of every sheet but the first, and in the bookmarks
    Blocks blocks{};
};

/// A sheet's own place for the column of text, in points.
struct Area {
    double x = 0, y = 0, width = 0, height = 0;
};
[[nodiscard]] Area area_of(const SheetSize& sheet);

struct Bookmark {
    std::string text;
    std::size_t depth = 0;  ///< 1: under the last of depth 0
};

/// Which sheet of how many it is in its document, and which page of a binder; 0 where that is not said.
struct Foot {
    std::string title{};
    std::size_t sheet = 0, sheets = 0, page = 0;
};

/// One sheet: draws itself on a white ground.
struct Page {
    std::function<void(cairo_t* ink)> draw;
    std::vector<Bookmark> bookmarks{};
    Foot foot{};
};

/// Blocks one below another; what does not fit goes on to the next sheet under the title again. For the foot the title
/// and which sheet of how many.
[[nodiscard]] std::vector<Page> laid_out(const Document& document, const Type& type, const SheetSize& size);

/// Sets what stands at the foot of each.
void add_feet(std::vector<Page>& pages, const Type& type, const SheetSize& size);

/// The bytes of a PDF, SVG or PNG. Throws std::runtime_error where Cairo cannot.
[[nodiscard]] std::string drawn(const std::vector<Page>& pages, const std::string& title, const Printing& printing);
/// The same of one document, with its feet.
[[nodiscard]] std::string drawn(const Document& document, const Type& type, const Printing& printing);

}  // namespace scruple::paper
