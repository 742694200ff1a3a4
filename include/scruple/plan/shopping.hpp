// SPDX-License-Identifier: MIT
// From a plan of what will be shot and printed to what must be bought.
//
// Right and simple: each chemical is bought alone, from whoever makes the whole of it cheapest in packs of
// one size, postage added once a supplier. Nothing is said of expiry or of the best calendar.
#pragma once

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

struct ChemicalNeed {
    check::Id chemical = check::none, form = check::none;
    std::string name, form_name;  ///< as the recipes ask for it
    Figure needed, on_hand, to_buy;
    std::string buy_form;        ///< the form that is sold, where it is another one …
    Figure to_buy_as;            ///< … and how much of that
    std::string supplier, pack;  ///< empty where nobody sells it
    std::int64_t packs = 0;
    check::Exact cost;  ///< packs × price
    std::string currency;
    Figure left_over;                  ///< after the month
    std::vector<std::string> because;  ///< `Heron part A 2.4 l: 216 g`
};

struct PostageRow {
    std::string supplier;
    check::Exact cost;
    std::string currency;
};

struct ShoppingList {
    std::string plan;
    std::string first_day, last_day;  ///< 2026-12-03
    std::vector<SolutionNeed> solutions;
    std::vector<ChemicalNeed> chemicals;  ///< by name; those with enough on hand too
    std::vector<PostageRow> postage;
    std::vector<std::pair<std::string, check::Exact>> totals;  ///< by currency
    std::vector<std::string> warnings;                         ///< what has no capacity, what nobody sells
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
