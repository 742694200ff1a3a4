// SPDX-License-Identifier: MIT
#include "worth_a_look.hpp"

#include <algorithm>
#include <iterator>
#include <set>

namespace scruple::plan {

namespace {

constexpr std::ptrdiff_t most_by_each_measure = 30;
constexpr std::size_t most_shops = 64;  // as many as a PackProblem takes

check::Exact price_of(const Offer* offer) {
    return offer->price->price.value;
}

check::Exact rate_of(const Offer* offer) {
    return price_of(offer) / offer->pack.measure;
}

std::set<const Offer*> least_by(check::Exact (*measure)(const Offer*), std::vector<const Offer*> offers) {
    const auto end = offers.begin() + std::min<std::ptrdiff_t>(std::ssize(offers), most_by_each_measure);
    std::ranges::partial_sort(offers, end, {}, [&](const Offer* offer) { return std::pair(measure(offer), offer); });
    return {offers.begin(), end};
}

bool keep_best_offers(std::vector<const Offer*>& offers) {
    if (std::ssize(offers) <= 2 * most_by_each_measure) return false;
    std::set<const Offer*> kept = least_by(rate_of, offers);
    kept.merge(least_by(price_of, offers));
    std::erase_if(offers, [&](const Offer* offer) { return !kept.contains(offer); });
    return true;
}

/// The shops of the best offer of each, then of the second best.
std::set<const check::Supplier*> best_shops(const OffersOfEach& all) {
    std::set<const check::Supplier*> shops;
    std::vector<std::vector<const Offer*>> sorted;
    for (const auto* offers : all) {
        sorted.push_back(*offers);
        std::ranges::stable_sort(sorted.back(), {}, rate_of);
    }
    for (std::size_t rank = 0; rank < 2 * static_cast<std::size_t>(most_by_each_measure); ++rank)
        for (const auto& offers : sorted)
            if (rank < offers.size() && shops.size() < most_shops) shops.insert(offers[rank]->supplier);
    return shops;
}

}  // namespace

bool keep_worth_a_look(const OffersOfEach& all) {
    bool some_are_left_out = false;
    std::set<const check::Supplier*> shops;
    for (auto* offers : all) {
        some_are_left_out = keep_best_offers(*offers) || some_are_left_out;
        for (const Offer* offer : *offers) shops.insert(offer->supplier);
    }
    if (shops.size() <= most_shops) return some_are_left_out;
    const auto kept = best_shops(all);
    for (auto* offers : all) std::erase_if(*offers, [&](const Offer* it) { return !kept.contains(it->supplier); });
    return true;
}

}  // namespace scruple::plan
