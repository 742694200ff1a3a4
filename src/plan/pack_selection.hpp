// SPDX-License-Identifier: MIT
// One cover for each want, and the best of those that have been found.
#pragma once

#include "pack_covers.hpp"

namespace scruple::plan {

/// What is due for what is ordered.
[[nodiscard]] Exact postage_for(const PackProblem& problem, const Goods& goods);

class BestSelection {
  public:
    explicit BestSelection(const PackProblem& problem) : problem_(problem) {}

    /// One for each want; kept where nothing as good was found before.
    void offer(const std::vector<const Cover*>& covers);

    [[nodiscard]] bool is_found() const { return found_; }
    /// With the postage.
    [[nodiscard]] const Exact& cost() const { return sum_.cost; }
    [[nodiscard]] const std::vector<Cover>& covers() const { return covers_; }

  private:
    const PackProblem& problem_;
    bool found_ = false;
    PackSum sum_;
    std::vector<Cover> covers_;
};

}  // namespace scruple::plan
