// SPDX-License-Identifier: MIT
// Back ends for a printer: a plan of work on sheets of paper, as PDF, SVG or PNG, in black on white.
//
// The same input gives the same bytes. Sizes are in millimetres here and in points (1/72 in) inside. Type is set by
// Pango and drawn by Cairo. This rung is a module of its own, loaded when something is drawn: see module.hpp.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <variant>

#include "scruple/plan/card.hpp"
#include "scruple/plan/evening.hpp"
#include "scruple/plan/label.hpp"
#include "scruple/plan/mixing_calendar.hpp"
#include "scruple/plan/shopping.hpp"
#include "scruple/plan/stock_sheet.hpp"

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

/// A PDF of all cards, with the contents in front: page numbers, bookmarks by recipe, and links. Cards of one recipe
/// stand side by side.
[[nodiscard]] std::string binder(std::span<const plan::Card> cards, const Printing& printing);

[[nodiscard]] std::string shopping(const plan::ShoppingList& list, const Printing& printing);
[[nodiscard]] std::string calendar(const plan::MixingCalendar& calendar, const Printing& printing);
[[nodiscard]] std::string shelf(const plan::StockSheet& shelf, const Printing& printing);

/// A picture of the evening, one bar a solution along the time, then its steps by the clock.
[[nodiscard]] std::string evening(const plan::Evening& evening, const Printing& printing);

/// Labels side by side and below one another, as a sheet of stickers has them.
struct LabelGrid {
    double width_mm = 98, height_mm = 68;   ///< of one label
    int columns = 2, rows = 4;              ///< on a sheet
    std::optional<double> left_mm, top_mm;  ///< to the first label; nullopt: the whole stands in the middle
    double gap_x_mm = 0, gap_y_mm = 0;      ///< between labels; 0: a thin line to cut along
};

/// From this size a label bears the hazard statements: Regulation (EC) No 1272/2008, annex I, table 1.3.
inline constexpr double hazard_label_width_mm = 74, hazard_label_height_mm = 52;

/// A label whose words need more room than it has.
struct Misfit {
    std::string name;
    double height_mm = 0;  ///< that would do, at the same width
};

/// Each on a label of its own, in type as large as there is room for; hazard statements have 6.5 points and more, which
/// makes an x 1.25 mm high. A Misfit where the least type is too large.
[[nodiscard]] std::variant<std::string, Misfit> labels(std::span<const plan::Label> labels, const LabelGrid& grid,
                                                       const Printing& printing);

}  // namespace scruple::paper
