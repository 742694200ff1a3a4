// SPDX-License-Identifier: MIT
#include "pack_selection.hpp"

namespace scruple::plan {

Exact postage_for(const PackProblem& problem, const Goods& goods) {
    Exact due;
    for (std::size_t shop = 0; shop < problem.shops.size(); ++shop) {
        const PackShop& seller = problem.shops[shop];
        const bool sent_free = seller.free_from && goods.worth[shop] >= *seller.free_from;
        if ((goods.shops >> shop & 1) != 0 && !sent_free) due += seller.postage;
    }
    return due;
}

void BestSelection::offer(const std::vector<const Cover*>& covers) {
    Goods goods{std::vector<Exact>(problem_.shops.size())};
    PackSum sum;
    for (const Cover* cover : covers) {
        goods += cover->goods;
        sum += cover->sum;
    }
    sum.cost += postage_for(problem_, goods);
    if (found_ && !(sum < sum_)) return;
    found_ = true;
    sum_ = std::move(sum);
    std::vector<Cover> kept;
    kept.reserve(covers.size());
    for (const Cover* cover : covers) kept.push_back(*cover);
    covers_ = std::move(kept);
}

}  // namespace scruple::plan
