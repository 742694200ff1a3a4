// SPDX-License-Identifier: MIT
#include "stock.hpp"

#include <algorithm>

namespace scruple::plan {

using check::Exact;

namespace {

template <class Key>
Exact held_in(const std::map<Key, Exact>& shelf, const Key& key) {
    const auto found = shelf.find(key);
    return found == shelf.end() ? Exact() : found->second;
}

template <class Key>
Exact take_from(std::map<Key, Exact>& shelf, const Key& key, const Exact& wanted) {
    const auto found = shelf.find(key);
    if (found == shelf.end()) return {};
    Exact taken = std::min(found->second, wanted);
    found->second -= taken;
    return taken;
}

}  // namespace

Exact held(const Stock& stock, const Ware& ware) {
    return held_in(stock.wares, ware);
}

Exact held(const Stock& stock, check::Id solution) {
    return held_in(stock.solutions, solution);
}

Exact take_own(Stock& stock, const Amount& asked) {
    return take_from(stock.wares, asked.ware, asked.measure);
}

Exact take_solution(Stock& stock, check::Id solution, const Exact& ml) {
    return take_from(stock.solutions, solution, ml);
}

std::vector<Taking> take_others(const check::Model& model, Stock& stock, const Amount& asked) {
    std::vector<Taking> takings;
    Exact wanted = asked.measure;
    for (auto other = stock.wares.lower_bound(Ware{asked.ware.chemical, 0, {}, false}); other != stock.wares.end();
         ++other) {
        auto& [ware, measure] = *other;
        if (ware.chemical != asked.ware.chemical) break;
        if (ware == asked.ware || measure.is_zero() || wanted.is_zero()) continue;
        const auto rate = in_place_of(model, asked.ware, ware);
        if (!rate || rate->is_zero()) continue;
        const Exact taken = std::min(measure, wanted * *rate);
        measure -= taken;
        wanted -= taken / *rate;
        takings.push_back({ware, taken, taken / *rate});
    }
    return takings;
}

Exact take(const check::Model& model, Stock& stock, const Amount& asked) {
    Exact wanting = asked.measure - take_own(stock, asked);
    for (const auto& taking : take_others(model, stock, {asked.ware, wanting})) wanting -= taking.as_asked;
    return wanting;
}

}  // namespace scruple::plan
