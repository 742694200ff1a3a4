// SPDX-License-Identifier: MIT
// The library that is built in, ready to use.
#pragma once

#include <span>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {

/// Its model, checked when the program was built. Views go into `sources`: those of library(), and any behind them.
[[nodiscard]] check::Model library_model(std::span<const text::Source> sources);

/// Gives a workspace the library's trees, which it does without where nothing needs them.
void parse_library(Loaded& loaded);

}  // namespace scruple::driver
