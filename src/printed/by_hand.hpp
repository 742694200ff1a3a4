// SPDX-License-Identifier: MIT
// `reading` lines: what they settle.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "ways.hpp"

namespace scruple::printed {

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
    one_and,  ///< `1+9`
    form
};
[[nodiscard]] ByHand by_hand_of(std::string_view said);

/// `fl oz us in column 2`, `% w/w of acetic acid`: the only column, counted from 0, and the only chemical it is about.
struct Narrowed {
    std::optional<std::size_t> column{};
    std::string chemical{};  ///< as it is typed; empty for all
};
[[nodiscard]] Narrowed narrowed(std::string_view said);

/// Of the page, or of one of its columns.
[[nodiscard]] bool is_said(const std::vector<check::ReadingByHand>& by_hand, ByHand what, std::size_t column = 0);

/// Whether a line settles things for a chemical.
[[nodiscard]] bool is_about(const check::Model& model, const check::ReadingByHand& line, check::Id chemical);

/// A line's way by hand: those it excludes are taken away.
void keep_to_hand(const check::Model& model, Layout& layout, const std::vector<check::ReadingByHand>& by_hand);

}  // namespace scruple::printed
