// SPDX-License-Identifier: MIT
// The size of a batch, once it is settled how its chemicals are come by.
#pragma once

#include <variant>

#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// The batch as a share of the batch as written, of the model as it stands.
[[nodiscard]] std::variant<check::Exact, Refusal> batch_scale(const check::Model& model, const CardRequest& request);

}  // namespace scruple::plan
