// SPDX-License-Identifier: MIT
// What a page needs to work out a card's figures for another volume.
#pragma once

#include "html.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::emit {

/// A block of data that no browser runs, with nothing in it that could end the block.
[[nodiscard]] html::Markup rescaling_html(const plan::Card& card);

}  // namespace scruple::emit
