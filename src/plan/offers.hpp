// SPDX-License-Identifier: MIT
// Who sells what, in which packs, and which of them is cheapest.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "ware.hpp"

namespace scruple::plan {

/// One line of a price list.
struct Offer {
    const check::Supplier* supplier = nullptr;
    const check::Price* price = nullptr;
    Amount pack;
};

/// Every line that can be counted, in the order of the workspace.
[[nodiscard]] std::vector<Offer> all_offers(const check::Model& model);

/// So many packs of one offer.
struct Purchase {
    Offer offer;
    std::int64_t packs = 0;
    check::Exact cost;
    check::Exact left;  ///< bought and not wanted, as the pack is counted
};

/// The least that must be paid for so much of a ware; then what leaves less over; then by the supplier's name.
/// `currency` comes before every other, since two currencies cannot be compared.
[[nodiscard]] std::optional<Purchase> cheapest(const std::vector<Offer>& offers, const Amount& wanted,
                                               std::string_view currency);

/// The same where only other forms or strengths of the chemical are sold: `wanted` mole for mole in each of them.
[[nodiscard]] std::optional<Purchase> cheapest_instead(const check::Model& model, const std::vector<Offer>& offers,
                                                       const Amount& wanted, std::string_view currency);

}  // namespace scruple::plan
