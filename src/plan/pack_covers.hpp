// SPDX-License-Identifier: MIT
// The ways in which packs of some shops cover one want.
#pragma once

#include <algorithm>
#include <compare>
#include <map>

#include "scruple/plan/packs.hpp"

namespace scruple::plan {

/// Shops as bits.
using ShopSet = std::uint64_t;
/// Of each kind of a want, how many packs.
using PackCounts = std::vector<std::int64_t>;

/// What packs cost, what they leave over as shares of what is wanted, and how many they are: in this order, less is
/// better.
struct PackSum {
    Exact cost, left_share;
    std::int64_t count = 0;

    PackSum& operator+=(const PackSum& more);
    friend std::strong_ordering operator<=>(const PackSum&, const PackSum&) = default;
};

/// What is ordered: prices by shop, and the shops, which may give something for nothing.
struct Goods {
    std::vector<Exact> worth;
    ShopSet shops = 0;

    [[nodiscard]] Exact cost() const;
    Goods& operator+=(const Goods& more);
    friend std::strong_ordering operator<=>(const Goods&, const Goods&) = default;
};

struct Cover {
    PackCounts packs;
    Goods goods;
    PackSum sum;
};

/// How packs count while orders are looked for.
struct Counting {
    std::vector<Exact> parts;  ///< of its price, by shop; above 0
    ShopSet may_fill_up = 0;   ///< shops from which more than is needed may be of use
};

/// What a cover costs, as packs count and in money.
struct CoverLimits {
    Exact counted, paid;
};

/// How many steps are left before a list counts as one that was made to be slow.
class PackPatience {
  public:
    explicit PackPatience(std::size_t steps) : left_(steps) {}
    void spend(std::size_t steps) { left_ -= std::min(left_, steps); }
    [[nodiscard]] bool is_over() const { return left_ == 0; }

  private:
    std::size_t left_;
};

class CoverSearch;

class Covers {
  public:
    Covers(const PackProblem& problem, PackPatience& patience) : problem_(problem), patience_(patience) {}

    /// The cheapest, no pack of which could be left out; null where these shops do not sell it.
    const Cover* least(std::size_t want, ShopSet shops);
    /// What the cheapest of all wants cost; nullopt where these shops do not sell each of them.
    const std::optional<Exact>& least_of_all(ShopSet shops);
    /// The cheapest as packs then count. There is one where these shops sell it.
    std::optional<Cover> least(std::size_t want, ShopSet shops, const Counting& counting);
    /// Every way that is within the limits; of those that bring each shop the same, the best.
    std::vector<Cover> within(std::size_t want, ShopSet shops, const Counting& counting, const CoverLimits& limits);

    [[nodiscard]] bool proven() const { return proven_; }

  private:
    void note(const CoverSearch& search);

    const PackProblem& problem_;
    PackPatience& patience_;
    std::map<std::pair<std::size_t, ShopSet>, std::optional<Cover>> least_;
    std::map<ShopSet, std::optional<Exact>> least_of_all_;
    bool proven_ = true;
};

/// From any shop, without `barred` and what is as many or more of each kind: the cheapest, and every way that costs no
/// more than `limit`.
[[nodiscard]] std::optional<Cover> least_beside(const PackProblem& problem, std::size_t want, const PackCounts& barred);
[[nodiscard]] std::vector<Cover> beside(const PackProblem& problem, std::size_t want, const PackCounts& barred,
                                        const Exact& limit);

}  // namespace scruple::plan
