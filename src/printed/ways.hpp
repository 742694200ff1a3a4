// SPDX-License-Identifier: MIT
// All the ways there are to read a page, with what speaks for each before its columns are looked at.
#pragma once

#include <vector>

#include "reading.hpp"

namespace scruple::printed {

/// What is known of a column: whether it is metric, and the lines that give its volume.
struct Column {
    bool metric = false;
    std::vector<const Line*> volume_lines;  ///< the one to make up to; else all water and other liquids, which add up
    bool made_up = false;                   ///< there is one to make up to
};

struct Layout {
    std::vector<Column> columns;
    std::vector<Known> lines;  ///< of the page's ingredients, in their order
    Known water;               ///< a liquid, for what its lines come to
};

[[nodiscard]] Layout layout_of(const check::Model& model, const Page& page);

/// What a column makes in ml; 0 where it does not say.
[[nodiscard]] double volume_of(const Layout& layout, std::size_t column, const Shared& shared);

/// Every combination that the page leaves open, `reading` lines kept to. What is not open is not varied.
[[nodiscard]] std::vector<Shared> shared_readings(const Page& page, const Layout& layout,
                                                  const std::vector<check::ReadingByHand>& by_hand);

/// A line's way by hand: those it excludes are taken away.
void keep_to_hand(const check::Model& model, Layout& layout, const std::vector<check::ReadingByHand>& by_hand);

/// What a `reading` line names, in one of the words that the program itself prints.
enum class ByHand : std::uint8_t {
    nothing,
    imperial,
    us,
    avoirdupois,
    apothecaries,
    grain,
    gram,
    by_volume,
    by_weight,
    weight_in_volume,
    form
};
[[nodiscard]] ByHand by_hand_of(std::string_view said);

/// `% v/v` for a liquid and `% w/v` for a salt, where no `reading` line says otherwise.
[[nodiscard]] std::string_view percent_of(const Known& known, const std::vector<check::ReadingByHand>& by_hand);

}  // namespace scruple::printed
