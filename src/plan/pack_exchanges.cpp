// SPDX-License-Identifier: MIT
#include "pack_selection.hpp"

namespace scruple::plan {

namespace {

Goods goods_of(const PackProblem& problem, std::size_t want, const PackCounts& packs) {
    Goods goods{std::vector<Exact>(problem.shops.size())};
    for (std::size_t kind = 0; kind < packs.size(); ++kind) {
        if (packs[kind] == 0) continue;
        const PackKind& pack = problem.wants[want].kinds[kind];
        goods.worth[pack.shop] += pack.price * packs[kind];
        goods.shops |= ShopSet(1) << pack.shop;
    }
    return goods;
}

Exact total(const PackProblem& problem, const Goods& others, const Goods& goods) {
    Goods all = others;
    all += goods;
    return goods.cost() + postage_for(problem, all);
}

/// What is due for the others whatever else is ordered.
Exact unavoidable_postage(const PackProblem& problem, const Goods& others) {
    Exact due;
    for (std::size_t shop = 0; shop < problem.shops.size(); ++shop)
        if ((others.shops >> shop & 1) != 0 && !problem.shops[shop].free_from) due += problem.shops[shop].postage;
    return due;
}

}  // namespace

PackExchanges::PackExchanges(const PackProblem& problem, const PackChoice& choice)
    : problem_(problem), choice_(choice), worth_(problem.shops.size()), wants_(problem.shops.size()) {
    for (std::size_t want = 0; want < problem.wants.size(); ++want) {
        const Goods goods = goods_of(problem, want, choice.packs[want]);
        for (std::size_t shop = 0; shop < problem.shops.size(); ++shop) {
            worth_[shop] += goods.worth[shop];
            wants_[shop] += goods.shops >> shop & 1;
        }
    }
}

std::optional<PackExchange> PackExchanges::next_best(std::size_t want) const {
    const PackCounts& chosen = choice_.packs[want];
    const Goods own = goods_of(problem_, want, chosen);
    Goods others{worth_};
    for (std::size_t shop = 0; shop < problem_.shops.size(); ++shop) {
        others.worth[shop] -= own.worth[shop];
        if (wants_[shop] > (own.shops >> shop & 1)) others.shops |= ShopSet(1) << shop;
    }
    auto best = least_beside(problem_, want, chosen);
    if (!best) return std::nullopt;
    best->sum.cost = total(problem_, others, best->goods);
    const Exact limit = best->sum.cost - unavoidable_postage(problem_, others);
    for (Cover& cover : beside(problem_, want, chosen, limit)) {
        cover.sum.cost = total(problem_, others, cover.goods);
        if (cover.sum < best->sum) best = std::move(cover);
    }
    return PackExchange{std::move(best->packs), best->sum.cost - total(problem_, others, own)};
}

void PackExchanges::take(std::size_t want, const PackExchange& exchange) {
    const Goods before = goods_of(problem_, want, choice_.packs[want]);
    const Goods after = goods_of(problem_, want, exchange.packs);
    for (std::size_t shop = 0; shop < problem_.shops.size(); ++shop) {
        worth_[shop] += after.worth[shop] - before.worth[shop];
        wants_[shop] += (after.shops >> shop & 1) - (before.shops >> shop & 1);
    }
    choice_.packs[want] = exchange.packs;
    choice_.cost += exchange.more;
}

}  // namespace scruple::plan
