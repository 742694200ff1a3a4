// SPDX-License-Identifier: MIT
// What each line comes to under the best reading, with what bears it out and what does not.
#pragma once

#include "judge.hpp"
#include "scruple/printed/settle.hpp"
#include "search.hpp"

namespace scruple::printed {

[[nodiscard]] std::vector<LineRead> lines_read(const check::Model& model, const Page& page, const Layout& layout,
                                               const Judge& judge, const Found& best);

}  // namespace scruple::printed
