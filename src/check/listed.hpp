// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace scruple::check {

/// `a`, in backticks.
[[nodiscard]] inline std::string quoted(const std::string& name) {
    return "`" + name + "`";
}

/// `a`, `b` or `c`: each in backticks.
[[nodiscard]] std::string listed(const std::vector<std::string>& names);

}  // namespace scruple::check
