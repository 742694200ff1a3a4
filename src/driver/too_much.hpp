// SPDX-License-Identifier: MIT
// What is said of a workspace that is past a limit.
#pragma once

#include <string_view>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {

/// `more than 1000000 lines in its recipe files`
[[nodiscard]] Trouble too_much(const std::filesystem::path& folder, std::size_t most, std::string_view what);

}  // namespace scruple::driver
