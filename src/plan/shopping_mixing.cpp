// SPDX-License-Identifier: MIT
// From the solutions that are mixed to the chemicals in them.
#include <algorithm>
#include <map>

#include "ingredients.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::Model;

namespace {

/// Goes down from solution to solution, each once all that use it have said what for.
class Mixer {
  public:
    Mixer(const Model& model, const MixPlan& mixing, const Stock& stock, const std::vector<Offer>& offers,
          ShoppingList& list)
        : model_(model), mixing_(mixing), stock_(stock), offers_(offers), list_(list) {}

    std::vector<ChemicalWanted> run(const std::vector<Wanted>& wanted) {
        for (const auto& bath : wanted) because_[bath.solution] = bath.because;
        for (const auto& mixed : mixing_.solutions) settle(mixed);
        return std::move(chemicals_);
    }

  private:
    void settle(const MixedSolution& mixed) {
        const Id solution = mixed.solution;
        auto& because = because_[solution];
        Exact to_mix;
        for (const auto& batch : mixed.batches) {
            to_mix += batch.ml;
            if (!batch.raised.empty()) because.push_back(batch.raised);
        }
        const Exact needed = mixed.held + to_mix;
        if (needed.is_zero()) return;
        list_.solutions.push_back({solution, check::shown_name(model_, solution), rounded_up(needed, true),
                                   rounded_down(held(stock_, solution), true), rounded_up(to_mix, true), because});
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
        because_[ingredient.solution].push_back(whose + ": " + volume_words(ingredient.ml));
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
    const MixPlan& mixing_;
    const Stock& stock_;
    const std::vector<Offer>& offers_;
    ShoppingList& list_;
    std::map<Id, std::vector<std::string>> because_;
    std::vector<ChemicalWanted> chemicals_;
};

}  // namespace

std::vector<ChemicalWanted> mix_down(const Model& model, const std::vector<Wanted>& wanted, const MixPlan& mixing,
                                     const Stock& stock, const std::vector<Offer>& offers, ShoppingList& list) {
    return Mixer(model, mixing, stock, offers, list).run(wanted);
}

}  // namespace scruple::plan
