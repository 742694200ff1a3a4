// SPDX-License-Identifier: MIT
#pragma once

#include "pages.hpp"

namespace scruple::paper {

/// The sheets of one card.
[[nodiscard]] std::vector<Page> card_pages(const plan::Card& card, const Type& type, const SheetSize& sheet);

}  // namespace scruple::paper
