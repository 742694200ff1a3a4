// SPDX-License-Identifier: MIT
#include "offers.hpp"

#include <tuple>

namespace scruple::plan {

using check::Exact;
using check::Model;

namespace {

// More packs than anyone counts; beyond it the number would not fit.
constexpr std::int64_t most_packs = 1'000'000'000;

std::optional<Purchase> purchase(const Offer& offer, const Exact& wanted) {
    const Exact packs = (wanted / offer.pack.measure).ceil();
    if (packs > most_packs) return std::nullopt;
    const auto count = static_cast<std::int64_t>(packs.to_double());
    return Purchase{offer, count, packs * offer.price->price.value, packs * offer.pack.measure - wanted};
}

bool better(const Purchase& a, const Purchase& b, std::string_view currency) {
    const auto rank = [currency](const Purchase& purchase) {
        const auto& price = purchase.offer.price->price;
        return std::tuple(price.currency != currency, price.currency, purchase.cost, purchase.left,
                          purchase.offer.supplier->name);
    };
    return rank(a) < rank(b);
}

void keep_better(std::optional<Purchase>& best, const std::optional<Purchase>& other, std::string_view currency) {
    if (other && (!best || better(*other, *best, currency))) best = other;
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

std::optional<Purchase> cheapest(const std::vector<Offer>& offers, const Amount& wanted, std::string_view currency) {
    std::optional<Purchase> best;
    for (const auto& offer : offers)
        if (offer.pack.ware == wanted.ware) keep_better(best, purchase(offer, wanted.measure), currency);
    return best;
}

std::optional<Purchase> cheapest_instead(const Model& model, const std::vector<Offer>& offers, const Amount& wanted,
                                         std::string_view currency) {
    std::optional<Purchase> best;
    for (const auto& offer : offers)
        if (const auto rate = in_place_of(model, wanted.ware, offer.pack.ware))
            keep_better(best, purchase(offer, wanted.measure * *rate), currency);
    return best;
}

}  // namespace scruple::plan
