// SPDX-License-Identifier: MIT
// The three steps of a shopping list: solutions, chemicals, purchases.
#pragma once

#include <vector>

#include "mix_plan.hpp"
#include "offers.hpp"
#include "scruple/plan/shopping.hpp"
#include "stock.hpp"

namespace scruple::plan {

/// What the baths of the plan hold when they are poured off.
[[nodiscard]] std::vector<WasteRow> waste_of(const check::Model& model, const std::vector<Wanted>& wanted,
                                             const MixPlan& mixing);

/// A chemical that the solutions ask for, in the form in which they do.
struct ChemicalWanted {
    Amount amount;
    std::string_view grade;
    std::vector<std::string> because;
};

/// Down from the baths, what is mixed of each; fills `list.solutions`.
[[nodiscard]] std::vector<ChemicalWanted> mix_down(const check::Model& model, const std::vector<Wanted>& wanted,
                                                   const MixPlan& mixing, const Stock& stock,
                                                   const std::vector<Offer>& offers, ShoppingList& list);

/// One chemical on its way to a row of the list.
struct ShoppingRow {
    Amount to_buy;
    ChemicalNeed need;
};

/// What is on hand of the chemicals, and packs for the rest; fills `list.chemicals`, `postage` and `totals`.
void buy(const check::Model& model, const std::vector<ChemicalWanted>& wanted, Stock& stock,
         const std::vector<Offer>& offers, ShoppingList& list);

/// Packs for what the rows have to buy, and postage and totals of them. `currency` comes before every other.
void choose_packs(const check::Model& model, const std::vector<Offer>& offers, std::string_view currency,
                  std::vector<ShoppingRow>& rows, ShoppingList& list);

/// Each process and kind of film or sheet of the plan once, by offers in one currency.
[[nodiscard]] std::vector<UseCost> use_costs(const check::Model& model, const check::Plan& plan,
                                             const std::vector<Offer>& offers, std::string_view currency);

/// `sodium sulfite (anhydrous)`
[[nodiscard]] std::string title_of(const ChemicalNeed& need);

/// To the tenth of a g or ml above, since less would be too little.
[[nodiscard]] Figure rounded_up(const check::Exact& measure, bool by_volume);
/// `1.5 l`, rounded up
[[nodiscard]] std::string volume_words(const check::Exact& ml);
/// To the tenth below, for what is there.
[[nodiscard]] Figure rounded_down(const check::Exact& measure, bool by_volume);

}  // namespace scruple::plan
