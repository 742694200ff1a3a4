// SPDX-License-Identifier: MIT
// The bottles of a bench, and until when each is taken.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// How many bottles of which ml.
using Bottling = std::vector<std::pair<std::int64_t, check::Exact>>;

class BottleRack {
  public:
    explicit BottleRack(const std::vector<check::Bottle>& bottles);

    /// Of the bottles that are free on a day those that leave the least air, taken up to a day and with it. Nullopt
    /// where they do not hold so much; empty where the bench says no sizes.
    std::optional<Bottling> fill(const check::Exact& ml, check::Day from, check::Day up_to);

  private:
    struct Taken {
        check::Day up_to = 0;
        Bottling bottles;
    };

    void take_back(check::Day before);

    std::vector<check::Bottle> free_;
    std::vector<Taken> taken_;
};

}  // namespace scruple::plan
