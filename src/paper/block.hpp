// SPDX-License-Identifier: MIT
// What is set below one another on a sheet.
#pragma once

#include <cairo.h>

#include <functional>
#include <vector>

namespace scruple::paper {

/// Something as wide as the column and `height` points high, drawn from its top left corner.
struct Block {
    double height = 0;
    double before = 0;  ///< white above it, but not at the top of a sheet
    bool stays_with_next = false;
    std::function<void(cairo_t* ink, double x, double y)> draw{};
    std::vector<Block> pieces{};  ///< what it falls into where a whole sheet is too short for it
};
using Blocks = std::vector<Block>;

}  // namespace scruple::paper
