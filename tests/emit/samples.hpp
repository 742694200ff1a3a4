// SPDX-License-Identifier: MIT
// Plans of work made by hand, so that back ends are tested without the rungs before them.
#pragma once

#include "scruple/emit/emit.hpp"

namespace samples {

[[nodiscard]] scruple::plan::Figure figure(scruple::quantity::Exact value, std::string unit);

/// A part of a developer with every kind of line; the figures need not be sound chemistry.
[[nodiscard]] scruple::plan::Card part_a();
/// A whole recipe of two lines that says nothing it need not.
[[nodiscard]] scruple::plan::Card bare();
/// Every text of it tries to get out of the page, the terminal or the document.
[[nodiscard]] scruple::plan::Card hostile();

[[nodiscard]] scruple::plan::ShoppingList december();
[[nodiscard]] scruple::plan::StockSheet shelf();
[[nodiscard]] scruple::plan::StockEntry log_line();
[[nodiscard]] std::vector<scruple::plan::Weighing> weighings();
[[nodiscard]] scruple::plan::Reacted reacted();
[[nodiscard]] std::vector<scruple::plan::ContentsSheet> contents();
[[nodiscard]] std::vector<scruple::plan::Why> whys();
[[nodiscard]] scruple::check::Chemical carbonate();

inline constexpr const char* hostile_text =
    "<script>alert('x')</script>\" onload=\"y\" &amp; \x1b[2J\x1b]0;t\a ]]> \\u0000";

}  // namespace samples
