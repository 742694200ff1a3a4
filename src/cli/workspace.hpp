// SPDX-License-Identifier: MIT
// The workspace of a call.
#pragma once

#include "asked.hpp"
#include "call.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::cli {

/// Reads and checks the folder of --in. Throws Stop where it cannot be read. What is read stays until the process ends.
[[nodiscard]] driver::Loaded& open_workspace(const Call& call, const Asked& asked = {},
                                             driver::Load how = driver::Load::whole);

/// The same for the bench: throws Stop, with the diagnostics, where anything in it is wrong.
[[nodiscard]] driver::Loaded& open_for_the_bench(const Call& call, const Asked& asked = {});

}  // namespace scruple::cli
