// SPDX-License-Identifier: MIT
// From solutions wanted, less what is on hand of them, to the chemicals in them.
#include <algorithm>
#include <map>

#include "ingredients.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::Model;

namespace {

/// Goes down from solution to solution, each once all that use it have said how much they take.
class Mixer {
  public:
    Mixer(const Model& model, Stock& stock, const std::vector<Offer>& offers, ShoppingList& list)
        : model_(model), stock_(stock), offers_(offers), list_(list) {}

    std::vector<ChemicalWanted> run(const std::vector<Wanted>& wanted) {
        std::vector<Id> baths;
        for (const auto& bath : wanted) {
            needs_[bath.solution] = {bath.ml, bath.because};
            baths.push_back(bath.solution);
        }
        for (const Id solution : in_order_of_making(model_, baths)) settle(solution);
        return std::move(chemicals_);
    }

  private:
    struct Need {
        Exact ml;
        std::vector<std::string> because;
    };

    void settle(Id solution) {
        Need& need = needs_[solution];
        if (need.ml.is_zero()) return;
        const Exact on_hand = held(stock_, solution);
        const Exact to_mix = need.ml - take_solution(stock_, solution, need.ml);
        list_.solutions.push_back({solution, check::shown_name(model_, solution), rounded_up(need.ml, true),
                                   rounded_down(on_hand, true), rounded_up(to_mix, true), need.because});
        if (to_mix.is_zero()) return;
        const auto made_of = ingredients_of(model_, solution, to_mix, {&stock_, &offers_});
        for (const auto& warning : made_of.warnings) say_once(list_.warnings, warning);
        const std::string whose = check::shown_name(model_, solution) + " " + volume_words(to_mix);
        for (const auto& ingredient : made_of.list) hand_down(ingredient, whose);
    }

    void hand_down(const Ingredient& ingredient, const std::string& whose) {
        if (ingredient.solution == check::none) {
            want(ingredient, whose);
            return;
        }
        Need& need = needs_[ingredient.solution];
        need.ml += ingredient.ml;
        need.because.push_back(whose + ": " + volume_words(ingredient.ml));
    }

    void want(const Ingredient& ingredient, const std::string& whose) {
        if (!ingredient.grade.empty() && !sold_at_all(ingredient.amount.ware.chemical)) return;
        const Amount amount =
            to_be_had(ingredient.amount.ware) ? ingredient.amount : as_pure(model_, ingredient.amount);
        auto found = std::ranges::find_if(
            chemicals_, [&](const ChemicalWanted& other) { return other.amount.ware == amount.ware; });
        if (found == chemicals_.end())
            found = chemicals_.insert(found, ChemicalWanted{{amount.ware, 0}, ingredient.grade, {}});
        found->amount.measure += amount.measure;
        const auto figure = rounded_up(amount.measure, amount.ware.by_volume);
        found->because.push_back(whose + ": " + figure.with_unit() + ingredient.way);
    }

    [[nodiscard]] bool sold_at_all(Id chemical) const {
        return std::ranges::any_of(offers_, [&](const Offer& offer) { return offer.pack.ware.chemical == chemical; });
    }

    /// A percent solution that stands on the shelf or in a shop is wanted as such, others as what is in them.
    [[nodiscard]] bool to_be_had(const Ware& ware) const {
        return !held(stock_, ware).is_zero() ||
               std::ranges::any_of(offers_, [&](const Offer& offer) { return offer.pack.ware == ware; });
    }

    const Model& model_;
    Stock& stock_;
    const std::vector<Offer>& offers_;
    ShoppingList& list_;
    std::map<Id, Need> needs_;
    std::vector<ChemicalWanted> chemicals_;
};

}  // namespace

std::vector<ChemicalWanted> mix_down(const Model& model, const std::vector<Wanted>& wanted, Stock& stock,
                                     const std::vector<Offer>& offers, ShoppingList& list) {
    return Mixer(model, stock, offers, list).run(wanted);
}

}  // namespace scruple::plan
