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

/// The ware that so much of another is bought as: itself where it is sold, else the form or strength that comes
/// cheapest, mole for mole; with its currency, `currency` before every other, since two cannot be compared.
struct BoughtAs {
    Ware ware;
    std::string_view currency;
};
[[nodiscard]] std::optional<BoughtAs> bought_as(const check::Model& model, const std::vector<Offer>& offers,
                                                const Amount& wanted, std::string_view currency);

}  // namespace scruple::plan
