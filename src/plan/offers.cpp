// SPDX-License-Identifier: MIT
#include "offers.hpp"

#include <tuple>

namespace scruple::plan {

using check::Exact;
using check::Model;

namespace {

/// What whole packs of one offer cost, and leave.
struct Price {
    const Offer* offer = nullptr;
    Exact cost, left;
};

bool better(const Price& a, const Price& b, std::string_view currency) {
    const auto rank = [currency](const Price& price) {
        const std::string_view in = price.offer->price->price.currency;
        return std::tuple(in != currency, in, price.cost, price.left, price.offer->supplier->name);
    };
    return rank(a) < rank(b);
}

}  // namespace

std::vector<Offer> all_offers(const Model& model) {
    std::vector<Offer> offers;
    for (const auto& supplier : model.suppliers)
        for (const auto& price : supplier.prices) {
            const auto pack = counted(model, price.chemical, price.form, price.strength, price.grams, price.ml);
            if (pack && pack->measure > 0) offers.push_back({&supplier, &price, *pack});
        }
    return offers;
}

std::optional<BoughtAs> bought_as(const Model& model, const std::vector<Offer>& offers, const Amount& wanted,
                                  std::string_view currency) {
    std::optional<Price> best;
    for (const auto& offer : offers) {
        const bool own = offer.pack.ware == wanted.ware;
        const auto rate = own ? Exact(1) : in_place_of(model, wanted.ware, offer.pack.ware);
        if (!rate) continue;
        const Exact measure = wanted.measure * *rate;
        const Exact packs = (measure / offer.pack.measure).ceil();
        const Price price{&offer, packs * offer.price->price.value, packs * offer.pack.measure - measure};
        const bool best_is_own = best && best->offer->pack.ware == wanted.ware;
        if (!best || own > best_is_own || (own == best_is_own && better(price, *best, currency))) best = price;
    }
    if (!best) return std::nullopt;
    return BoughtAs{best->offer->pack.ware, best->offer->price->price.currency};
}

}  // namespace scruple::plan
