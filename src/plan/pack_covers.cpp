// SPDX-License-Identifier: MIT
#include "pack_covers.hpp"

#include <algorithm>

namespace scruple::plan {

namespace {

// A list that somebody wrote takes a few hundred; past this one that was made to be slow is cut short. The first cover
// comes within a few steps, where there is one at all.
constexpr std::size_t most_steps = 20'000, most_covers = 2'000;
// More packs than anyone counts; beyond it the number would not fit.
constexpr std::int64_t most_packs = 1'000'000'000;

std::int64_t whole(const Exact& number) {
    return number > most_packs ? most_packs : static_cast<std::int64_t>(number.to_double());
}

bool better(const Cover& a, const Cover& b) {
    return std::tie(a.cost, a.left_share, a.count) < std::tie(b.cost, b.left_share, b.count);
}

}  // namespace

/// Goes through the kinds, those that give most for the money first.
class CoverSearch {
  public:
    CoverSearch(const PackProblem& problem, std::size_t want, ShopSet shops, const std::optional<PackBarred>& barred)
        : problem_(problem), want_(problem.wants[want]), barred_(barred && barred->want == want ? &*barred : nullptr) {
        for (std::size_t kind = 0; kind < want_.kinds.size(); ++kind)
            if ((shops >> want_.kinds[kind].shop & 1) != 0) order_.push_back(kind);
        std::ranges::stable_sort(order_, {}, [&](std::size_t kind) {
            return std::tuple(rate(kind), -want_.kinds[kind].holds, want_.kinds[kind].shop);
        });
        packs_.resize(want_.kinds.size());
    }

    std::optional<Cover> least() {
        cheapest(0, want_.measure, 0);
        return best_;
    }

    std::vector<Cover> within(const Cover& least, const Exact& limit) {
        limit_ = limit;
        found_ = {least};
        steps_ = 0;
        all(0, want_.measure, 0);
        return found_;
    }

    [[nodiscard]] bool cut_short() const { return steps_ > most_steps || found_.size() > most_covers; }

  private:
    [[nodiscard]] Exact rate(std::size_t kind) const { return want_.kinds[kind].price / want_.kinds[kind].holds; }

    [[nodiscard]] bool is_barred() const {
        if (barred_ == nullptr) return false;
        for (std::size_t kind = 0; kind < packs_.size(); ++kind)
            if (packs_[kind] < barred_->packs[kind]) return false;
        return true;
    }

    [[nodiscard]] Cover cover(const Exact& wanting, const Exact& cost) const {
        Cover cover{packs_, std::vector<Exact>(problem_.shops.size()), cost, -wanting / want_.measure, 0};
        for (const std::size_t kind : order_) {
            if (packs_[kind] == 0) continue;
            cover.goods[want_.kinds[kind].shop] += want_.kinds[kind].price * packs_[kind];
            cover.count += packs_[kind];
        }
        return cover;
    }

    void cheapest(std::size_t at, const Exact& wanting, const Exact& cost) {
        ++steps_;
        if (is_enough()) return;
        if (wanting <= 0) {
            if ((best_ && cost > best_->cost) || is_barred()) return;
            Cover found = cover(wanting, cost);
            if (!best_ || better(found, *best_)) best_ = std::move(found);
            return;
        }
        if (at == order_.size() || (best_ && cost + wanting * rate(order_[at]) > best_->cost)) return;
        const std::size_t kind = order_[at];
        for (std::int64_t packs = whole((wanting / want_.kinds[kind].holds).ceil()); packs >= 0; --packs) {
            packs_[kind] = packs;
            cheapest(at + 1, wanting - want_.kinds[kind].holds * packs, cost + want_.kinds[kind].price * packs);
            if (is_enough()) break;
        }
        packs_[kind] = 0;
    }

    /// Where nothing has been found there is more patience, but it ends, too: what is wanted may be more packs than are
    /// counted.
    [[nodiscard]] bool is_enough() const { return steps_ > (best_ ? most_steps : 2 * most_steps); }

    /// More than is needed is of use only to shops that send large orders free.
    [[nodiscard]] std::int64_t most_of(std::size_t kind, const Exact& wanting, const Exact& cost) const {
        const PackKind& pack = want_.kinds[kind];
        const std::int64_t needed = wanting > 0 ? whole((wanting / pack.holds).ceil()) : 0;
        if (pack.price.is_zero()) return needed;
        const std::int64_t paid = whole(((limit_ - cost) / pack.price).floor());
        return problem_.shops[pack.shop].free_from ? paid : std::min(paid, needed);
    }

    void all(std::size_t at, const Exact& wanting, const Exact& cost) {
        if (++steps_ > most_steps || found_.size() > most_covers) return;
        if (at == order_.size()) {
            if (wanting <= 0 && !is_barred()) keep(cover(wanting, cost));
            return;
        }
        const std::size_t kind = order_[at];
        if (wanting > 0 && cost + wanting * rate(kind) > limit_) return;
        for (std::int64_t packs = most_of(kind, wanting, cost); packs >= 0; --packs) {
            packs_[kind] = packs;
            all(at + 1, wanting - want_.kinds[kind].holds * packs, cost + want_.kinds[kind].price * packs);
            if (cut_short()) break;
        }
        packs_[kind] = 0;
    }

    void keep(Cover cover) {
        const auto rival = std::ranges::find(found_, cover.goods, &Cover::goods);
        if (rival == found_.end())
            found_.push_back(std::move(cover));
        else if (better(cover, *rival))
            *rival = std::move(cover);
    }

    const PackProblem& problem_;
    const PackWant& want_;
    const PackBarred* barred_;
    std::vector<std::size_t> order_;
    std::vector<std::int64_t> packs_;
    std::size_t steps_ = 0;
    std::optional<Cover> best_;
    Exact limit_;
    std::vector<Cover> found_;
};

Covers::Covers(const PackProblem& problem, const std::optional<PackBarred>& barred)
    : problem_(problem), barred_(barred) {}

const Cover* Covers::least(std::size_t want, ShopSet shops) {
    const auto [at, is_new] = least_.try_emplace({want, shops});
    if (is_new) {
        CoverSearch search(problem_, want, shops, barred_);
        at->second = search.least();
        proven_ = proven_ && !search.cut_short();
    }
    return at->second ? &*at->second : nullptr;
}

const std::vector<Cover>& Covers::within(std::size_t want, ShopSet shops, const Exact& slack) {
    const auto [at, is_new] = within_.try_emplace({want, shops, slack});
    const Cover* cheapest = is_new ? least(want, shops) : nullptr;
    if (cheapest != nullptr) {
        CoverSearch search(problem_, want, shops, barred_);
        at->second = search.within(*cheapest, cheapest->cost + slack);
        proven_ = proven_ && !search.cut_short();
    }
    return at->second;
}

}  // namespace scruple::plan
