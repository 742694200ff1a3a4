// SPDX-License-Identifier: MIT
// What a card says where a conversion begins.
#pragma once

#include <string>
#include <vector>

#include "assumptions.hpp"
#include "scruple/check/making.hpp"

namespace scruple::plan {

/// What it makes and gives off at this scale, and how large a vessel it wants.
[[nodiscard]] std::vector<std::string> making_words(const check::Model& model, const check::Making& making,
                                                    const check::Exact& scale, Assumptions& assumptions);

}  // namespace scruple::plan
