// SPDX-License-Identifier: MIT
// What the lines of the log leave on hand.
#pragma once

#include <string>
#include <vector>

#include "stock.hpp"

namespace scruple::plan {

/// Every line up to a day and with it. A line that takes more than there is leaves nothing, and a warning.
[[nodiscard]] Stock stock_on(const check::Model& model, check::Day day, std::vector<std::string>& warnings);

}  // namespace scruple::plan
