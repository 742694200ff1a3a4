// SPDX-License-Identifier: MIT
// From a plan of what will be shot and printed to what must be bought.
//
// Packs of all chemicals are chosen together, so that goods and postage cost the least (packs.hpp).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// A solution the plan uses: how much, how much of it the log says is left, how much to mix.
struct SolutionNeed {
    check::Id solution = check::none;
    std::string name;
    Figure needed, on_hand, to_mix;
    std::vector<std::string> because;  ///< `6 films 135 on 2026-12-03: 6 × 250 ml`
};

/// So many packs from one supplier.
struct PackRow {
    std::string supplier, pack;  ///< `500 g`
    std::int64_t count = 0;
    check::Exact cost;  ///< count × price
};

/// The cheapest other packs of this chemical, with all else ordered as it is.
struct NextBest {
    std::vector<PackRow> packs;
    check::Exact more;  ///< that the whole list then costs
};

struct ChemicalNeed {
    check::Id chemical = check::none, form = check::none;
    std::string name, form_name;  ///< as the recipes ask for it
    Figure needed, on_hand, to_buy;
    std::string buy_form;               ///< the form that is sold, where it is another one …
    Figure to_buy_as;                   ///< … and how much of that
    std::vector<PackRow> packs;         ///< empty where nobody sells it, or where it …
    std::string along_with;             ///< … comes out of the packs of this chemical
    check::Exact cost;                  ///< of all its packs
    std::string currency;               ///< empty where nothing is bought
    std::optional<NextBest> next_best;  ///< none where no other packs would do
    bool filled_up = false;             ///< a pack more than is needed, since postage is saved by it
    Figure left_over;                   ///< after the month
    std::string keeps;                  ///< `2 years` from the day it came; empty where that is not recorded
    std::vector<std::string> because;   ///< `Heron part A 2.4 l: 216 g`
};

struct PostageRow {
    std::string supplier;
    check::Exact cost;
    std::string currency;
};

/// What is poured off after use.
struct WasteRow {
    std::string kind;  ///< `film developer`; the solution's name where its recipe says no kind
    Figure volume;
    bool silver = false;
};

/// What the chemicals cost that one film or sheet takes of a bath, by the cheapest pack of each, postage left out.
struct BathCost {
    std::string bath;
    check::Exact cost;
};

/// The same through all baths of a process.
struct UseCost {
    std::string process, per;  ///< `film 135`, `sheet 8x10 in`
    check::Exact cost;
    std::string currency;
    std::vector<BathCost> baths;
    std::vector<std::string> unpriced;  ///< chemicals that nobody sells, and that are not in the cost
};

/// What is otherwise than on another list, line by line.
struct ListComparison {
    std::string with;  ///< `January`
    std::vector<std::string> lines;
};

struct ShoppingList {
    std::string plan;
    std::string first_day, last_day;  ///< 2026-12-03
    std::vector<SolutionNeed> solutions;
    std::vector<ChemicalNeed> chemicals;  ///< by name; those with enough on hand too
    std::vector<PostageRow> postage;
    std::vector<std::pair<std::string, check::Exact>> totals;  ///< by currency
    std::vector<WasteRow> waste;                               ///< silver-bearing kinds first
    std::vector<UseCost> use_costs;
    std::vector<ListComparison> compared;
    std::vector<std::string> warnings;  ///< what has no capacity, what nobody sells
};

[[nodiscard]] ShoppingList shopping_list(const check::Model& model, check::Id plan);

/// ml of each solution that using a bath for these films or sheets takes: the bath, then what it is made of.
/// Uses the larger of the tank's volume and the floor of stock that the recipe's capacity states.
struct Drawn {
    check::Id solution = check::none;
    check::Exact ml;
    std::string because;
};
[[nodiscard]] std::vector<Drawn> drawn_for(const check::Model& model, check::Id bath,
                                           const std::vector<check::Use>& uses, std::vector<std::string>& warnings);

}  // namespace scruple::plan
