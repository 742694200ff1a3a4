// SPDX-License-Identifier: MIT
// One way to mix for a plan: the best there is, but for what is put off, and whether the bottles do.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "held_batches.hpp"
#include "mix_plan.hpp"
#include "scruple/plan/mixing_days.hpp"

namespace scruple::plan {

struct MixTask {
    const check::Model& model;
    const std::vector<Wanted>& wanted;
    HeldBatches on_hand;
    check::Day first = 0;
    const std::vector<check::Bottle>& bottles;
};

/// A solution and a day on which it is used.
using MixUse = std::pair<check::Id, check::Day>;
/// The earliest day on which to mix for a use and for all later ones of that solution.
using PutOff = std::map<MixUse, check::Day>;

/// There are too few bottles.
struct Jam {
    check::Day day = 0;
    std::string words;
    std::vector<MixUse> may_wait;  ///< uses after that day of what stands in bottles then
};

struct MixAttempt {
    MixPlan plan;
    MixingDays worth;
    std::optional<Jam> jam;
};

[[nodiscard]] MixAttempt attempt_mixing(const MixTask& task, const PutOff& put_off);

}  // namespace scruple::plan
