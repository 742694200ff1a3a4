// SPDX-License-Identifier: MIT
// Two workspaces beside each other, solution by solution.
#pragma once

#include <string>

#include "scruple/driver/driver.hpp"
#include "scruple/plan/compare.hpp"

namespace scruple::driver {

/// One side: a workspace, and what of it is meant.
struct Side {
    Loaded loaded;
    std::string only;   ///< the path of the one source whose recipes are meant; empty for all
    std::string asked;  ///< in the caller's words
};

/// Solutions are paired by name, then what is left by being the same once it has settled. What the log has on hand
/// changes nothing: recipes are compared, and not shelves.
[[nodiscard]] plan::Compared compare(Side before, Side after);

/// What a comparison goes by, of all that is meant: one fact a line, solution by solution.
[[nodiscard]] std::string facts_text(Side side);

}  // namespace scruple::driver
