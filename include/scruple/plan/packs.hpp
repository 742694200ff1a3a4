// SPDX-License-Identifier: MIT
// Which packs to buy of which shop, so that goods and postage together cost the least.
//
// Nothing is bought that is not wanted, but more packs of it than are needed where that saves postage. Exact: every
// set of shops that can be the cheapest is gone through, each shop paid postage or bought from until it is free.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "scruple/quantity/exact.hpp"

namespace scruple::plan {

using quantity::Exact;

struct PackKind {
    std::size_t shop = 0;
    Exact price;
    Exact holds;  ///< in the unit of the want, more than 0
};

struct PackWant {
    Exact measure;  ///< more than 0
    std::vector<PackKind> kinds;
};

struct PackShop {
    Exact postage;
    std::optional<Exact> free_from;  ///< goods for so much are sent without postage
};

struct PackProblem {
    std::vector<PackShop> shops;  ///< at most 64
    std::vector<PackWant> wants;
};

struct PackChoice {
    std::vector<std::vector<std::int64_t>> packs;  ///< by want and kind
    Exact cost;                                    ///< with postage
    bool proven = true;                            ///< false where there were too many ways to go through them all
};

/// Of what costs the same, what leaves less over as a share of what is wanted, then fewer packs, then the shop that
/// comes first. Nullopt where a want is not sold.
[[nodiscard]] std::optional<PackChoice> cheapest_packs(const PackProblem& problem);

/// Other packs of one want.
struct PackExchange {
    std::vector<std::int64_t> packs;  ///< by kind
    Exact more;                       ///< that all then costs, with postage
};

/// What one want comes to in other packs, while all else is ordered as it is.
class PackExchanges {
  public:
    PackExchanges(const PackProblem& problem, const PackChoice& choice);

    /// The cheapest packs of a want that are not those chosen, nor those and more of them. Nullopt where there are
    /// none.
    [[nodiscard]] std::optional<PackExchange> next_best(std::size_t want) const;
    /// Chooses other packs of a want.
    void take(std::size_t want, const PackExchange& exchange);

    [[nodiscard]] const PackChoice& choice() const { return choice_; }

  private:
    const PackProblem& problem_;
    PackChoice choice_;
    // By shop.
    std::vector<Exact> worth_;
    std::vector<std::size_t> wants_;  ///< how many come from it, all or in part
};

}  // namespace scruple::plan
