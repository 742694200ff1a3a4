// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "scruple/text/source.hpp"

namespace scruple::diagnostics {

/// One line as a terminal shows it, in three stretches; widths are in columns.
struct Excerpt {
    std::string before;
    std::string marked;
    std::string after;
    std::size_t width_before = 0;
    std::size_t width_marked = 0;  ///< 0 where the place lies between two characters
};

/// The stretch of `line` around `place`, both spans of `bytes`: without indentation, tabs as blanks, what
/// acts on a terminal made visible, and `…` where the line goes on.
[[nodiscard]] Excerpt excerpt(std::string_view bytes, text::Span line, text::Span place);

}  // namespace scruple::diagnostics
