// SPDX-License-Identifier: MIT
// A message of each kind as a file of the tests gives it, for the help.
#pragma once

#include <string_view>

namespace scruple::cli {

struct KindSample {
    std::string_view kind, message, write;
};

/// nullptr where no recipe file gives the kind.
[[nodiscard]] const KindSample* sample_of(std::string_view kind);

}  // namespace scruple::cli
