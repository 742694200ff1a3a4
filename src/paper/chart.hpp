// SPDX-License-Identifier: MIT
// Bars along the time, black on white: solid where hands are at it, striped where it goes on by itself.
#pragma once

#include <string>
#include <vector>

#include "column.hpp"

namespace scruple::paper {

struct Stretch {
    int from = 0, to = 0;  ///< minutes
    bool hands = true;     ///< else it goes on by itself
};

struct Bar {
    std::string label;
    int from = 0, to = 0;  ///< a line along the whole of it
    std::vector<Stretch> stretches;
};

/// A mark below the bars.
struct Tick {
    int at = 0;
    std::string label;
};

/// Each bar under its label, as wide as the column is for `minutes`; ticks stand behind each.
[[nodiscard]] Block chart(const Column& column, const std::vector<Bar>& bars, const std::vector<Tick>& ticks,
                          int minutes);

}  // namespace scruple::paper
