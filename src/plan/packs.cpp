// SPDX-License-Identifier: MIT
#include "scruple/plan/packs.hpp"

#include <algorithm>

#include "pack_covers.hpp"

namespace scruple::plan {

namespace {

// As for the covers of one want: only a list made to be slow comes here.
constexpr std::size_t most_orders = 20'000, most_states = 20'000;

/// Some of the wants met: what that costs and leaves.
struct Part {
    Exact cost, left_share;
    std::int64_t count = 0;
    std::vector<const Cover*> covers;
};

bool better(const Part& a, const Part& b) {
    return std::tie(a.cost, a.left_share, a.count) < std::tie(b.cost, b.left_share, b.count);
}

/// Shops that an order goes to: all of them, and those that are bought from until they send it free.
struct Order {
    ShopSet from = 0, until_free = 0;
    Exact postage;
};

class Ordering {
  public:
    Ordering(const PackProblem& problem, const std::optional<PackBarred>& barred)
        : problem_(problem), covers_(problem, barred) {}

    std::optional<PackChoice> run() {
        decide(0, {}, sellers());
        if (!best_) return std::nullopt;
        PackChoice choice{{}, best_->cost, proven_ && covers_.proven()};
        for (const Cover* cover : best_->covers) choice.packs.push_back(cover->packs);
        return choice;
    }

  private:
    [[nodiscard]] ShopSet sellers() const {
        ShopSet all = 0;
        for (const auto& want : problem_.wants)
            for (const auto& kind : want.kinds) all |= ShopSet(1) << kind.shop;
        return all;
    }

    /// The least that wants from one on cost at these shops; nullopt where they do not sell all.
    std::optional<Exact> least_from(std::size_t want, ShopSet shops) {
        Exact sum;
        for (; want < problem_.wants.size(); ++want) {
            const Cover* cover = covers_.least(want, shops);
            if (cover == nullptr) return std::nullopt;
            sum += cover->cost;
        }
        return sum;
    }

    /// Each shop in turn: ordered from with postage, or free, or not at all.
    void decide(std::size_t shop, const Order& order, ShopSet open) {
        const auto least = least_from(0, order.from | open);
        if (!least || (best_ && order.postage + *least > best_->cost)) return;
        if (++orders_ > most_orders && best_) {
            proven_ = false;
            return;
        }
        if (open == 0) {
            fill(order);
            return;
        }
        while ((open >> shop & 1) == 0) ++shop;
        const ShopSet bit = ShopSet(1) << shop;
        const PackShop& seller = problem_.shops[shop];
        decide(shop + 1, {order.from | bit, order.until_free, order.postage + seller.postage}, open & ~bit);
        if (seller.postage.is_zero()) return;
        if (seller.free_from) decide(shop + 1, {order.from | bit, order.until_free | bit, order.postage}, open & ~bit);
        decide(shop + 1, order, open & ~bit);
    }

    /// No order is worth more above the least than the postage that it saves.
    [[nodiscard]] Exact slack_of(const Order& order) const {
        Exact slack;
        for (std::size_t shop = 0; shop < problem_.shops.size(); ++shop)
            if ((order.until_free >> shop & 1) != 0) slack += problem_.shops[shop].postage;
        return slack;
    }

    using States = std::map<std::vector<Exact>, Part>;

    /// Want by want; a state is how far each shop is on its way to sending free.
    void fill(const Order& order) {
        const Exact slack = slack_of(order);
        States states;
        states[std::vector<Exact>(problem_.shops.size())].cost = order.postage;
        for (std::size_t want = 0; want < problem_.wants.size(); ++want) {
            const auto rest = least_from(want + 1, order.from);
            States next;
            for (const auto& [goods, part] : states)
                for (const Cover& cover : covers_.within(want, order.from, slack))
                    if (!best_ || part.cost + cover.cost + *rest <= best_->cost) add(next, order, goods, part, cover);
            states = std::move(next);
        }
        for (auto& [goods, part] : states)
            if (is_free(order, goods) && (!best_ || better(part, *best_))) best_ = std::move(part);
    }

    void add(States& next, const Order& order, std::vector<Exact> goods, const Part& before, const Cover& cover) {
        for (std::size_t shop = 0; shop < goods.size(); ++shop)
            if ((order.until_free >> shop & 1) != 0)
                goods[shop] = std::min(goods[shop] + cover.goods[shop], *problem_.shops[shop].free_from);
        if (next.size() >= most_states && !next.contains(goods)) {
            proven_ = false;
            return;
        }
        Part part = before;
        part.cost += cover.cost;
        part.left_share += cover.left_share;
        part.count += cover.count;
        const auto [at, is_new] = next.try_emplace(std::move(goods));
        if (!is_new && !better(part, at->second)) return;
        part.covers.push_back(&cover);
        at->second = std::move(part);
    }

    [[nodiscard]] bool is_free(const Order& order, const std::vector<Exact>& goods) const {
        for (std::size_t shop = 0; shop < goods.size(); ++shop)
            if ((order.until_free >> shop & 1) != 0 && goods[shop] < *problem_.shops[shop].free_from) return false;
        return true;
    }

    const PackProblem& problem_;
    Covers covers_;
    std::optional<Part> best_;
    std::size_t orders_ = 0;
    bool proven_ = true;
};

}  // namespace

std::optional<PackChoice> cheapest_packs(const PackProblem& problem, const std::optional<PackBarred>& barred) {
    return Ordering(problem, barred).run();
}

}  // namespace scruple::plan
