// SPDX-License-Identifier: MIT
// What a card says where a conversion begins.
#pragma once

#include <vector>

#include "assumptions.hpp"
#include "scruple/check/making.hpp"
#include "scruple/plan/rescaling.hpp"

namespace scruple::plan {

/// What it makes and gives off, and how large a vessel it wants.
[[nodiscard]] std::vector<GrowingText> making_details(const check::Model& model, const check::Making& making);
void assume_of_making(const check::Model& model, const check::Making& making, Assumptions& assumptions);

}  // namespace scruple::plan
