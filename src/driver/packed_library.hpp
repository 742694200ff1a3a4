// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace scruple::driver {

/// What check::packed() made of the library; the source is written by src/library/pack.cpp.
[[nodiscard]] std::string_view packed_library();

}  // namespace scruple::driver
