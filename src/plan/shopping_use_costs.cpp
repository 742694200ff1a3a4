// SPDX-License-Identifier: MIT
// What the chemicals cost that one film or sheet takes on its way through a process.
#include <algorithm>
#include <optional>

#include "ingredients.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::Model;
using check::Use;

namespace {

Use one_of(const Use& use) {
    Use one = use;
    one.count = 1;
    if (use.area_cm2) one.area_cm2 = *use.area_cm2 / use.count;
    return one;
}

/// `film 135` of `6 films 135`
std::string per_one(const Use& use) {
    const std::string_view kind = use.sheets ? "sheet" : "film";
    const std::size_t at = use.text.find(kind);
    if (at == std::string_view::npos) return std::string(use.text);
    std::string_view rest = use.text.substr(at + kind.size());
    if (rest.starts_with('s')) rest.remove_prefix(1);
    return std::string(kind) + std::string(rest);
}

class UseCosts {
  public:
    UseCosts(const Model& model, const std::vector<Offer>& offers, std::string_view currency)
        : model_(model), offers_(offers), currency_(currency) {}

    std::vector<UseCost> run(const check::Plan& plan) {
        for (const auto& entry : plan.entries)
            for (const Use& use : entry.uses)
                if (entry.process != check::none && use.count > 0) add(model_.processes[entry.process], use);
        return std::move(costs_);
    }

  private:
    void add(const check::Process& process, const Use& use) {
        const std::string per = per_one(use);
        const bool told = std::ranges::any_of(
            costs_, [&](const UseCost& other) { return other.process == process.name && other.per == per; });
        if (told) return;
        UseCost cost;
        cost.process = process.name;
        cost.per = per;
        cost.currency = currency_;
        for (const auto& stage : process.stages)
            if (stage.solution != check::none) add_bath(cost, stage.solution, one_of(use));
        costs_.push_back(std::move(cost));
    }

    void add_bath(UseCost& cost, Id bath, const Use& use) const {
        std::vector<std::string> said;  // The list warns of the same.
        BathCost one{check::shown_name(model_, bath), 0};
        for (const auto& drawn : drawn_for(model_, bath, {use}, said))
            for (const auto& ingredient : ingredients_of(model_, drawn.solution, drawn.ml).list)
                if (ingredient.solution == check::none) add_chemical(cost, one, ingredient.amount);
        cost.cost += one.cost;
        cost.baths.push_back(std::move(one));
    }

    void add_chemical(UseCost& cost, BathCost& bath, const Amount& amount) const {
        const auto pure = as_pure(model_, amount);
        auto price = least_cost(amount);
        if (!price) price = least_cost(pure);
        if (price)
            bath.cost += *price;
        else if (amount.ware.chemical != model_.water)
            say_once(cost.unpriced, std::string(model_.chemicals[amount.ware.chemical].name));
    }

    /// By what a g or ml costs in the cheapest pack of any form, mole for mole.
    [[nodiscard]] std::optional<Exact> least_cost(const Amount& amount) const {
        std::optional<Exact> least;
        for (const Offer& offer : offers_) {
            if (offer.price->price.currency != currency_) continue;
            const bool own = offer.pack.ware == amount.ware;
            const auto rate = own ? Exact(1) : in_place_of(model_, amount.ware, offer.pack.ware);
            if (!rate) continue;
            const Exact cost = amount.measure * *rate / offer.pack.measure * offer.price->price.value;
            if (!least || cost < *least) least = cost;
        }
        return least;
    }

    const Model& model_;
    const std::vector<Offer>& offers_;
    std::string currency_;
    std::vector<UseCost> costs_;
};

}  // namespace

std::vector<UseCost> use_costs(const Model& model, const check::Plan& plan, const std::vector<Offer>& offers,
                               std::string_view currency) {
    return UseCosts(model, offers, currency).run(plan);
}

}  // namespace scruple::plan
