// SPDX-License-Identifier: MIT
#include "pack_covers.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

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

constexpr ShopSet all_shops = ~ShopSet(0);

}  // namespace

/// Goes through the kinds, those that give most for the money first.
class CoverSearch {
  public:
    CoverSearch(const PackProblem& problem, std::size_t want, ShopSet shops, const Counting* counting = nullptr,
                const PackCounts* barred = nullptr)
        : problem_(problem),
          want_(problem.wants[want]),
          may_fill_up_(counting == nullptr ? all_shops : counting->may_fill_up),
          barred_(barred) {
        for (const PackKind& kind : want_.kinds)
            prices_.push_back(counting == nullptr ? kind.price : kind.price * counting->parts[kind.shop]);
        for (std::size_t kind = 0; kind < want_.kinds.size(); ++kind)
            if ((shops >> want_.kinds[kind].shop & 1) != 0) order_.push_back(kind);
        std::ranges::stable_sort(order_, {}, [&](std::size_t kind) {
            return std::tuple(rate(kind), -want_.kinds[kind].holds, want_.kinds[kind].shop);
        });
        packs_.resize(want_.kinds.size());
    }

    std::optional<Cover> least() {
        cheapest(0, want_.measure, 0);
        if (best_) best_->sum.cost = best_->goods.cost();
        return best_;
    }

    std::vector<Cover> within(const CoverLimits& limits) {
        limits_ = limits;
        all(0, want_.measure, {});
        std::vector<Cover> covers;
        for (auto& [goods, cover] : found_) {
            cover.sum.cost = cover.goods.cost();
            covers.push_back(std::move(cover));
        }
        return covers;
    }

    [[nodiscard]] std::size_t steps() const { return steps_; }
    [[nodiscard]] bool cut_short() const { return steps_ > most_steps || found_.size() > most_covers; }

  private:
    [[nodiscard]] Exact rate(std::size_t kind) const { return prices_[kind] / want_.kinds[kind].holds; }

    [[nodiscard]] bool is_barred() const {
        if (barred_ == nullptr) return false;
        for (std::size_t kind = 0; kind < packs_.size(); ++kind)
            if (packs_[kind] < (*barred_)[kind]) return false;
        return true;
    }

    [[nodiscard]] Cover cover(const Exact& wanting, const Exact& cost) const {
        Cover cover{packs_, {std::vector<Exact>(problem_.shops.size())}, {cost, -wanting / want_.measure, 0}};
        for (const std::size_t kind : order_) {
            if (packs_[kind] == 0) continue;
            cover.goods.worth[want_.kinds[kind].shop] += want_.kinds[kind].price * packs_[kind];
            cover.goods.shops |= ShopSet(1) << want_.kinds[kind].shop;
            cover.sum.count += packs_[kind];
        }
        return cover;
    }

    void cheapest(std::size_t at, const Exact& wanting, const Exact& cost) {
        ++steps_;
        if (is_enough()) return;
        if (wanting <= 0) {
            if ((best_ && cost > best_->sum.cost) || is_barred()) return;
            Cover found = cover(wanting, cost);
            if (!best_ || found.sum < best_->sum) best_ = std::move(found);
            return;
        }
        if (at == order_.size() || (best_ && cost + wanting * rate(order_[at]) > best_->sum.cost)) return;
        const std::size_t kind = order_[at];
        for (std::int64_t packs = whole((wanting / want_.kinds[kind].holds).ceil()); packs >= 0; --packs) {
            packs_[kind] = packs;
            cheapest(at + 1, wanting - want_.kinds[kind].holds * packs, cost + prices_[kind] * packs);
            if (is_enough()) break;
        }
        packs_[kind] = 0;
    }

    /// Where nothing has been found there is more patience, but it ends, too: what is wanted may be more packs than are
    /// counted.
    [[nodiscard]] bool is_enough() const { return steps_ > (best_ ? most_steps : 2 * most_steps); }

    /// More than is needed is of use only to shops that send large orders free.
    [[nodiscard]] std::int64_t most_of(std::size_t kind, const Exact& wanting, const CoverLimits& so_far) const {
        const PackKind& pack = want_.kinds[kind];
        const std::int64_t needed = wanting > 0 ? whole((wanting / pack.holds).ceil()) : 0;
        if (pack.price.is_zero()) return needed;
        const std::int64_t paid = whole(
            std::min((limits_.counted - so_far.counted) / prices_[kind], (limits_.paid - so_far.paid) / pack.price)
                .floor());
        const bool may_fill_up = problem_.shops[pack.shop].free_from && (may_fill_up_ >> pack.shop & 1) != 0;
        return may_fill_up ? paid : std::min(paid, needed);
    }

    void all(std::size_t at, const Exact& wanting, const CoverLimits& so_far) {
        if (++steps_ > most_steps || found_.size() > most_covers) return;
        if (at == order_.size()) {
            if (wanting <= 0 && !is_barred()) keep(cover(wanting, so_far.counted));
            return;
        }
        const std::size_t kind = order_[at];
        if (wanting > 0 && so_far.counted + wanting * rate(kind) > limits_.counted) return;
        for (std::int64_t packs = most_of(kind, wanting, so_far); packs >= 0; --packs) {
            packs_[kind] = packs;
            all(at + 1, wanting - want_.kinds[kind].holds * packs,
                {so_far.counted + prices_[kind] * packs, so_far.paid + want_.kinds[kind].price * packs});
            if (cut_short()) break;
        }
        packs_[kind] = 0;
    }

    void keep(Cover cover) {
        const auto [at, is_new] = found_.try_emplace(cover.goods);
        if (is_new || cover.sum < at->second.sum) at->second = std::move(cover);
    }

    const PackProblem& problem_;
    const PackWant& want_;
    ShopSet may_fill_up_;
    const PackCounts* barred_;
    std::vector<Exact> prices_;  ///< as they count
    std::vector<std::size_t> order_;
    PackCounts packs_;
    std::size_t steps_ = 0;
    std::optional<Cover> best_;
    CoverLimits limits_;
    std::map<Goods, Cover> found_;
};

PackSum& PackSum::operator+=(const PackSum& more) {
    cost += more.cost;
    left_share += more.left_share;
    count += more.count;
    return *this;
}

Exact Goods::cost() const {
    return std::accumulate(worth.begin(), worth.end(), Exact(0));
}

Goods& Goods::operator+=(const Goods& more) {
    for (std::size_t shop = 0; shop < worth.size(); ++shop) worth[shop] += more.worth[shop];
    shops |= more.shops;
    return *this;
}

const Cover* Covers::least(std::size_t want, ShopSet shops) {
    const auto [at, is_new] = least_.try_emplace({want, shops});
    if (is_new) {
        CoverSearch search(problem_, want, shops);
        at->second = search.least();
        note(search);
    }
    return at->second ? &*at->second : nullptr;
}

const std::optional<Exact>& Covers::least_of_all(ShopSet shops) {
    const auto [at, is_new] = least_of_all_.try_emplace(shops);
    if (!is_new) return at->second;
    Exact sum;
    for (std::size_t want = 0; want < problem_.wants.size(); ++want) {
        const Cover* cover = least(want, shops);
        if (cover == nullptr) return at->second;
        sum += cover->sum.cost;
    }
    return at->second = sum;
}

std::optional<Cover> Covers::least(std::size_t want, ShopSet shops, const Counting& counting) {
    CoverSearch search(problem_, want, shops, &counting);
    auto cover = search.least();
    note(search);
    return cover;
}

std::vector<Cover> Covers::within(std::size_t want, ShopSet shops, const Counting& counting,
                                  const CoverLimits& limits) {
    CoverSearch search(problem_, want, shops, &counting);
    auto covers = search.within(limits);
    note(search);
    return covers;
}

void Covers::note(const CoverSearch& search) {
    patience_.spend(search.steps());
    proven_ = proven_ && !search.cut_short();
}

std::optional<Cover> least_beside(const PackProblem& problem, std::size_t want, const PackCounts& barred) {
    return CoverSearch(problem, want, all_shops, nullptr, &barred).least();
}

std::vector<Cover> beside(const PackProblem& problem, std::size_t want, const PackCounts& barred, const Exact& limit) {
    return CoverSearch(problem, want, all_shops, nullptr, &barred).within({limit, limit});
}

}  // namespace scruple::plan
