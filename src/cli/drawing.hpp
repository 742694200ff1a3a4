// SPDX-License-Identifier: MIT
// The module that draws.
#pragma once

#include "scruple/paper/module.hpp"

namespace scruple::cli {

/// Loaded when first asked for. Throws Stop where it cannot be.
[[nodiscard]] const paper::Module& drawing();

}  // namespace scruple::cli
