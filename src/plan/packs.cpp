// SPDX-License-Identifier: MIT
#include "scruple/plan/packs.hpp"

#include <algorithm>

#include "pack_filling.hpp"

namespace scruple::plan {

namespace {

// A list that somebody wrote takes a small part of either; past them one that was made to be slow is cut short.
constexpr std::size_t patience = 20'000'000, most_looks = 1'000'000;

class Ordering {
  public:
    explicit Ordering(const PackProblem& problem)
        : problem_(problem), patience_(patience), covers_(problem, patience_), best_(problem) {}

    std::optional<PackChoice> run() {
        // First all that pay postage: the better the best so far is, the less of the others is gone through.
        decide(0, {}, sellers());
        if (!best_.is_found()) return std::nullopt;
        fills_ = true;
        looks_ = 0;
        decide(0, {}, sellers());
        PackChoice choice{{}, best_.cost(), proven_ && covers_.proven()};
        for (const Cover& cover : best_.covers()) choice.packs.push_back(cover.packs);
        return choice;
    }

  private:
    [[nodiscard]] ShopSet sellers() const {
        ShopSet all = 0;
        for (const auto& want : problem_.wants)
            for (const auto& kind : want.kinds) all |= ShopSet(1) << kind.shop;
        return all;
    }

    /// Each shop in turn: ordered from with postage, or free, or not at all.
    void decide(std::size_t shop, const PackOrder& order, ShopSet open) {
        const auto& least = covers_.least_of_all(order.from | open);
        if (!least || (best_.is_found() && order.postage + std::max(*least, order.fills) > best_.cost())) return;
        looks_ += problem_.wants.size();
        if (looks_ > most_looks && best_.is_found()) {
            proven_ = false;
            return;
        }
        if (open == 0) return look_at(order);
        while ((open >> shop & 1) == 0) ++shop;
        const ShopSet bit = ShopSet(1) << shop;
        const PackShop& seller = problem_.shops[shop];
        decide(shop + 1, {order.from | bit, order.until_free, order.postage + seller.postage, order.fills},
               open & ~bit);
        if (seller.postage.is_zero()) return;
        if (fills_ && seller.free_from)
            decide(shop + 1, {order.from | bit, order.until_free | bit, order.postage, order.fills + *seller.free_from},
                   open & ~bit);
        decide(shop + 1, order, open & ~bit);
    }

    void look_at(const PackOrder& order) {
        if (order.until_free != 0) {
            proven_ = fill_up_to_free(problem_, covers_, order, best_, patience_) && proven_;
            return;
        }
        std::vector<const Cover*> cheapest;
        for (std::size_t want = 0; want < problem_.wants.size(); ++want)
            cheapest.push_back(covers_.least(want, order.from));
        best_.offer(cheapest);
    }

    const PackProblem& problem_;
    PackPatience patience_;
    Covers covers_;
    BestSelection best_;
    bool fills_ = false;
    std::size_t looks_ = 0;
    bool proven_ = true;
};

/// As far as one want after the other can do it.
PackChoice improved(const PackProblem& problem, const PackChoice& choice) {
    PackExchanges exchanges(problem, choice);
    for (bool again = true; again;) {
        again = false;
        for (std::size_t want = 0; want < problem.wants.size(); ++want) {
            const auto other = exchanges.next_best(want);
            if (!other || other->more >= 0) continue;
            exchanges.take(want, *other);
            again = true;
        }
    }
    return exchanges.choice();
}

}  // namespace

std::optional<PackChoice> cheapest_packs(const PackProblem& problem) {
    auto choice = Ordering(problem).run();
    if (choice && !choice->proven) choice = improved(problem, *choice);
    return choice;
}

}  // namespace scruple::plan
