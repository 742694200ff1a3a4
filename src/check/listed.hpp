// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace scruple::check {

/// `a`, `b` or `c`: each in backticks.
[[nodiscard]] std::string listed(const std::vector<std::string>& names);

}  // namespace scruple::check
