// SPDX-License-Identifier: MIT
// The ways in which packs of some shops cover one want.
#pragma once

#include <map>
#include <tuple>

#include "scruple/plan/packs.hpp"

namespace scruple::plan {

/// Shops as bits.
using ShopSet = std::uint64_t;

struct Cover {
    std::vector<std::int64_t> packs;  ///< by kind
    std::vector<Exact> goods;         ///< by shop
    Exact cost, left_share;
    std::int64_t count = 0;
};

class Covers {
  public:
    Covers(const PackProblem& problem, const std::optional<PackBarred>& barred);

    /// The cheapest, no pack of which could be left out; null where these shops do not sell it.
    const Cover* least(std::size_t want, ShopSet shops);
    /// Every way that costs no more than the least and `slack`; of those that bring each shop the same, the best.
    const std::vector<Cover>& within(std::size_t want, ShopSet shops, const Exact& slack);

    [[nodiscard]] bool proven() const { return proven_; }

  private:
    friend class CoverSearch;
    const PackProblem& problem_;
    std::optional<PackBarred> barred_;
    std::map<std::pair<std::size_t, ShopSet>, std::optional<Cover>> least_;
    std::map<std::tuple<std::size_t, ShopSet, Exact>, std::vector<Cover>> within_;
    bool proven_ = true;
};

}  // namespace scruple::plan
