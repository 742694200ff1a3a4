// SPDX-License-Identifier: MIT
// What could be read in several ways, how much worse the others are, and what they would change.
#pragma once

#include "judge.hpp"
#include "scruple/printed/settle.hpp"
#include "search.hpp"

namespace scruple::printed {

[[nodiscard]] std::vector<Question> questions(const check::Model& model, const Page& page, const Layout& layout,
                                              const Judge& judge, const Search& search,
                                              const std::vector<check::ReadingByHand>& by_hand);

}  // namespace scruple::printed
