// SPDX-License-Identifier: MIT
// What may have gone wrong between two columns that no reading brings together.
#pragma once

#include <string>

#include "judge.hpp"

namespace scruple::printed {

/// The likely slip in words; empty where none of those known explains it.
[[nodiscard]] std::string likely_slip(const check::Model& model, const Layout& layout, std::size_t line,
                                      const Compared& compared, const Shared& shared, const Way& way);

/// Whether two figures are too far apart for any rounding: cost_of_printing is then that of a slip.
[[nodiscard]] bool disagree(const Compared& compared);

}  // namespace scruple::printed
