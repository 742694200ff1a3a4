// SPDX-License-Identifier: MIT
// Back ends for a printer: a plan of work on sheets of paper, as PDF, SVG or PNG, in black on white.
//
// The same input gives the same bytes. Sizes are in millimetres here and in points (1/72 in) inside. Type is set by
// Pango and drawn by Cairo. This rung is a module of its own, loaded when something is drawn: see module.hpp.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "scruple/plan/card.hpp"

namespace scruple::paper {

enum class Medium : std::uint8_t {
    pdf,  ///< one page a sheet
    svg,  ///< the sheets below one another in one picture; type as outlines
    png   ///< the same in dots, 150 an inch, shades of grey
};

/// Upright sheets; margins are a quarter inch and more, so that every printer reaches the edge.
struct SheetSize {
    double width_mm = 210, height_mm = 297;
    friend bool operator==(const SheetSize&, const SheetSize&) = default;
};
inline constexpr SheetSize a4{210, 297};          ///< ISO 216
inline constexpr SheetSize a5{148, 210};          ///< ISO 216
inline constexpr SheetSize letter{215.9, 279.4};  ///< ANSI/ASME Y14.1 size A

struct Printing {
    Medium medium = Medium::pdf;
    SheetSize sheet = a4;
    std::optional<check::Day> day{};  ///< the date that a PDF bears; none: it bears none
};

/// Each card begins a sheet of its own. Body type has 14 points, amounts 22.
[[nodiscard]] std::string cards(std::span<const plan::Card> cards, const Printing& printing);

}  // namespace scruple::paper
