// SPDX-License-Identifier: MIT
// From what is to be bought to packs, postage and totals.
#include <algorithm>
#include <functional>
#include <map>
#include <set>

#include "ingredients.hpp"
#include "scruple/plan/packs.hpp"
#include "shopping_steps.hpp"
#include "worth_a_look.hpp"

namespace scruple::plan {

using check::Model;
using check::Supplier;

namespace {

/// Rows that come out of one kind of ware, and the offers of it in one currency.
struct Group {
    Ware ware;
    Exact measure;
    std::vector<ShoppingRow*> buyers;
    std::vector<const Offer*> offers;

    /// Whoever asked for this very ware, else the first.
    [[nodiscard]] ChemicalNeed& payer() const {
        const auto own = std::ranges::find_if(buyers, [&](const auto* row) { return row->to_buy.ware == ware; });
        return (own == buyers.end() ? buyers.front() : *own)->need;
    }
};

using Counts = std::vector<std::int64_t>;

std::vector<PackRow> pack_rows(const Group& group, const Counts& packs) {
    std::vector<PackRow> rows;
    for (std::size_t kind = 0; kind < packs.size(); ++kind) {
        const Offer& offer = *group.offers[kind];
        if (packs[kind] > 0)
            rows.push_back({std::string(offer.supplier->name), std::string(offer.price->pack_text), packs[kind],
                            offer.price->price.value * packs[kind]});
    }
    std::ranges::stable_sort(rows, std::greater{}, &PackRow::cost);
    return rows;
}

Exact held_by(const Group& group, const Counts& packs) {
    Exact sum;
    for (std::size_t kind = 0; kind < packs.size(); ++kind) sum += group.offers[kind]->pack.measure * packs[kind];
    return sum;
}

bool could_do_without_one(const Group& group, const Counts& packs) {
    const Exact over = held_by(group, packs) - group.measure;
    for (std::size_t kind = 0; kind < packs.size(); ++kind)
        if (packs[kind] > 0 && group.offers[kind]->pack.measure <= over) return true;
    return false;
}

/// What is bought in one currency.
class Basket {
  public:
    Basket(std::string_view currency, std::vector<Group> groups) : currency_(currency), groups_(std::move(groups)) {
        OffersOfEach all;
        for (Group& group : groups_) all.push_back(&group.offers);
        some_are_left_out_ = keep_worth_a_look(all);
        std::set<const Supplier*> suppliers;
        for (const auto& group : groups_)
            for (const auto* offer : group.offers) suppliers.insert(offer->supplier);
        suppliers_.assign(suppliers.begin(), suppliers.end());
        std::ranges::sort(suppliers_, {}, [](const Supplier* supplier) { return std::pair(supplier->name, supplier); });
        for (const auto* supplier : suppliers_) problem_.shops.push_back(shop_of(*supplier));
        for (const auto& group : groups_) problem_.wants.push_back(want_of(group));
    }

    void fill(ShoppingList& list) {
        const auto choice = cheapest_packs(problem_);
        if (!choice) {
            list.warnings.emplace_back("more is to be bought than can be counted in packs, and so no packs are named");
            return;
        }
        const PackExchanges exchanges(problem_, *choice);
        for (std::size_t i = 0; i < groups_.size(); ++i) note(i, exchanges);
        if (!choice->proven || some_are_left_out_)
            list.warnings.emplace_back(
                "there are too many ways to buy to go through them all: the packs are good ones, "
                "and cheaper ones are not ruled out");
    }

  private:
    [[nodiscard]] PackShop shop_of(const Supplier& supplier) const {
        PackShop shop;
        if (supplier.postage && supplier.postage->currency == currency_) shop.postage = supplier.postage->value;
        if (supplier.free_over && supplier.free_over->currency == currency_) shop.free_from = supplier.free_over->value;
        return shop;
    }

    [[nodiscard]] PackWant want_of(const Group& group) const {
        PackWant want{group.measure, {}};
        for (const auto* offer : group.offers) {
            const auto shop = std::ranges::find(suppliers_, offer->supplier) - suppliers_.begin();
            want.kinds.push_back({static_cast<std::size_t>(shop), offer->price->price.value, offer->pack.measure});
        }
        return want;
    }

    void note(std::size_t which, const PackExchanges& exchanges) const {
        const Group& group = groups_[which];
        const Counts& packs = exchanges.choice().packs[which];
        ChemicalNeed& need = group.payer();
        need.packs = pack_rows(group, packs);
        for (const auto& row : need.packs) need.cost += row.cost;
        need.left_over = rounded_down(held_by(group, packs) - group.measure, group.ware.by_volume);
        need.filled_up = could_do_without_one(group, packs);
        if (const auto next = exchanges.next_best(which))
            need.next_best = NextBest{pack_rows(group, next->packs), next->more};
        for (ShoppingRow* row : group.buyers) {
            row->need.currency = currency_;
            if (&row->need == &need) continue;
            row->need.along_with = title_of(need);
            row->need.because.push_back("bought together with " + row->need.along_with);
        }
    }

    std::string_view currency_;
    std::vector<Group> groups_;
    bool some_are_left_out_ = false;
    std::vector<const Supplier*> suppliers_;
    PackProblem problem_;
};

class Purchases {
  public:
    Purchases(const Model& model, const std::vector<Offer>& offers, std::string_view currency)
        : model_(model), offers_(offers), currency_(currency) {}

    void run(std::vector<ShoppingRow>& rows, ShoppingList& list) {
        for (auto& row : rows)
            if (!row.to_buy.measure.is_zero()) enter(row);
        for (auto& [currency, groups] : groups_) {
            std::vector<Group> all;
            for (auto& [ware, group] : groups) all.push_back(std::move(group));
            Basket(currency, std::move(all)).fill(list);
        }
        for (const auto& row : rows) sum_up(row.need);
        add_postage(list);
        for (const auto& [currency, sum] : totals_) list.totals.emplace_back(currency, sum);
    }

  private:
    void enter(ShoppingRow& row) {
        const auto as = bought_as(model_, offers_, row.to_buy, currency_);
        if (!as) return;
        Group& group = groups_[as->currency][as->ware];
        if (group.buyers.empty()) {
            group.ware = as->ware;
            for (const auto& offer : offers_)
                if (offer.pack.ware == as->ware && offer.price->price.currency == as->currency)
                    group.offers.push_back(&offer);
        }
        group.buyers.push_back(&row);
        group.measure += measure_as(row, as->ware);
    }

    /// How much of the ware the row needs; notes it where it is not the one that was asked for.
    [[nodiscard]] Exact measure_as(ShoppingRow& row, const Ware& ware) const {
        if (row.to_buy.ware == ware) return row.to_buy.measure;
        Exact measure = row.to_buy.measure * in_place_of(model_, row.to_buy.ware, ware).value_or(0);
        row.need.buy_form = form_words(model_, ware);
        if (row.need.buy_form.empty()) row.need.buy_form = model_.chemicals[ware.chemical].forms[ware.form].name;
        row.need.to_buy_as = rounded_up(measure, ware.by_volume);
        return measure;
    }

    void sum_up(const ChemicalNeed& need) {
        for (const auto& row : need.packs) {
            totals_[need.currency] += row.cost;
            goods_[row.supplier][need.currency] += row.cost;
        }
    }

    void add_postage(ShoppingList& list) {
        for (const auto& supplier : model_.suppliers) {
            const auto goods = goods_.find(std::string(supplier.name));
            if (goods == goods_.end() || !supplier.postage || goes_free(supplier, goods->second)) continue;
            const std::string currency(supplier.postage->currency);
            list.postage.push_back({std::string(supplier.name), supplier.postage->value, currency});
            totals_[currency] += supplier.postage->value;
        }
    }

    [[nodiscard]] static bool goes_free(const Supplier& supplier, const std::map<std::string, Exact>& goods) {
        if (!supplier.free_over) return false;
        const auto sum = goods.find(std::string(supplier.free_over->currency));
        return sum != goods.end() && sum->second >= supplier.free_over->value;
    }

    const Model& model_;
    const std::vector<Offer>& offers_;
    std::string_view currency_;
    std::map<std::string_view, std::map<Ware, Group>> groups_;
    std::map<std::string, Exact> totals_;
    std::map<std::string, std::map<std::string, Exact>> goods_;
};

}  // namespace

void choose_packs(const Model& model, const std::vector<Offer>& offers, std::string_view currency,
                  std::vector<ShoppingRow>& rows, ShoppingList& list) {
    Purchases(model, offers, currency).run(rows, list);
}

}  // namespace scruple::plan
