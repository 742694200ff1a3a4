// SPDX-License-Identifier: MIT
// What the text and the page of a shopping list both say.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/plan/shopping.hpp"

namespace scruple::emit::words {

inline constexpr std::string_view mix_heading = "To mix";
inline constexpr std::string_view days_elsewhere = "Which day takes how much of it:";
inline constexpr std::string_view buy_heading = "To buy";
inline constexpr std::string_view nobody_sells_heading = "Needed, and in no price list";
inline constexpr std::string_view enough_heading = "Enough on the shelf";
inline constexpr std::string_view waste_heading = "To pour off when used";
inline constexpr std::string_view waste_rule =
    "Local rules decide where it may go; ask your waste authority about what holds silver.";
inline constexpr std::string_view cost_heading = "What it costs";

inline constexpr std::string_view use_cost_heading = "What each film or sheet costs";
inline constexpr std::string_view use_cost_rule =
    "By the cheapest pack of each chemical, for what one takes of each bath; postage and leftovers are not in it.";

/// `Shopping for December`
[[nodiscard]] std::string shopping_title(const plan::ShoppingList& list);

/// `17.80`: two places, always.
[[nodiscard]] std::string money(const quantity::Exact& value);
[[nodiscard]] std::string money(const quantity::Exact& value, const std::string& currency);

enum class Errand { buy, nobody_sells, enough };
[[nodiscard]] Errand errand_of(const plan::ChemicalNeed& need);

/// `Otherwise than January`
[[nodiscard]] std::string compared_heading(const plan::ListComparison& compared);

/// `film 135 through roll film`, its cost, what of that each bath is, and what is not in it.
[[nodiscard]] std::string use_head(const plan::UseCost& cost);
[[nodiscard]] std::string use_cost(const quantity::Exact& cost, const std::string& currency);
[[nodiscard]] std::vector<std::string> use_details(const plan::UseCost& cost);

/// `fixer, with silver in it`
[[nodiscard]] std::string waste(const plan::WasteRow& row);

/// Whether it comes out of the packs that are bought for another row.
[[nodiscard]] bool comes_along(const plan::ChemicalNeed& need);
/// `2 × 500 g`; a dash where it comes along with another row.
[[nodiscard]] std::string packs(const plan::ChemicalNeed& need);
[[nodiscard]] std::string packs(const plan::PackRow& row);
/// `from Tidewater`, or which packs from whom.
[[nodiscard]] std::string from_whom(const plan::ChemicalNeed& need);
/// Why these packs and no others, in a line or two; nothing for what comes along.
[[nodiscard]] std::vector<std::string> why_packs(const plan::ChemicalNeed& need);
/// `needed 900 g, on hand 180 g, to buy 720 g; 280 g will be left`
[[nodiscard]] std::string reckoning(const plan::ChemicalNeed& need);
[[nodiscard]] std::string reckoning(const plan::SolutionNeed& need);
/// `sold as crystals: 1440 g of it`; empty where the form is the one asked for.
[[nodiscard]] std::string other_form(const plan::ChemicalNeed& need);

}  // namespace scruple::emit::words
