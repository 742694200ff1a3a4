// SPDX-License-Identifier: MIT
// From chemicals wanted to what is on hand of them, packs, postage and totals.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "ingredients.hpp"
#include "shopping_steps.hpp"
#include "ways.hpp"

namespace scruple::plan {

using check::Exact;
using check::Model;
using check::Supplier;

namespace {

/// One chemical on its way to a row of the list.
struct Row {
    const ChemicalWanted* wanted = nullptr;
    Amount to_buy;
    ChemicalNeed need;
};

std::string measure_words(const Ware& ware, const Exact& measure) {
    return rounded_up(measure, ware.by_volume).with_unit();
}

class Buyer {
  public:
    Buyer(const Model& model, Stock& stock, const std::vector<Offer>& offers, ShoppingList& list)
        : model_(model), stock_(stock), offers_(offers), list_(list) {
        settle_currency();
    }

    void run(const std::vector<ChemicalWanted>& wanted) {
        for (const auto& chemical : wanted) rows_.push_back(row_of(chemical));
        std::ranges::sort(rows_, {}, [](const Row& row) { return std::tie(row.need.name, row.need.form_name); });
        std::vector<Exact> on_hand;
        for (auto& row : rows_) on_hand.push_back(take_its_own(row));
        for (std::size_t i = 0; i < rows_.size(); ++i) take_what_else_there_is(rows_[i], on_hand[i]);
        for (const auto& [ware, buyers] : group()) buy_together(ware, buyers);
        for (auto& row : rows_) list_.chemicals.push_back(std::move(row.need));
        add_postage();
        for (const auto& [currency, sum] : totals_) list_.totals.emplace_back(currency, sum);
    }

  private:
    // ---- what there is ----

    [[nodiscard]] Row row_of(const ChemicalWanted& wanted) const {
        const Ware& ware = wanted.amount.ware;
        Row row{&wanted, wanted.amount, {}};
        row.need.chemical = ware.chemical;
        row.need.form = ware.form;
        row.need.name = model_.chemicals[ware.chemical].name;
        row.need.form_name = wanted.grade.empty() ? form_words(model_, ware) : std::string(wanted.grade);
        row.need.needed = rounded_up(wanted.amount.measure, ware.by_volume);
        row.need.because = wanted.because;
        return row;
    }

    Exact take_its_own(Row& row) {
        Exact there_was = held(stock_, row.to_buy.ware);
        row.to_buy.measure -= take_own(stock_, row.to_buy);
        return there_was;
    }

    void take_what_else_there_is(Row& row, Exact on_hand) {
        const Ware& asked = row.to_buy.ware;
        for (const auto& taking : take_others(model_, stock_, row.to_buy)) {
            on_hand += taking.as_asked;
            row.to_buy.measure -= taking.as_asked;
            row.need.because.push_back(
                fmt::format("{} {} on hand does for {}", measure_words(taking.from, taking.measure),
                            ware_words(model_, taking.from), measure_words(asked, taking.as_asked)));
        }
        row.need.on_hand = rounded_down(on_hand, asked.by_volume);
        row.need.to_buy = rounded_up(row.to_buy.measure, asked.by_volume);
        row.need.left_over = rounded_down(held(stock_, asked), asked.by_volume);
    }

    // ---- what is bought ----

    /// Two currencies cannot be compared: the one that the workspace names first is preferred.
    void settle_currency() {
        if (offers_.empty()) return;
        currency_ = offers_.front().price->price.currency;
        std::set<std::string_view> others;
        for (const auto& offer : offers_) others.insert(offer.price->price.currency);
        others.erase(currency_);
        for (const auto other : others)
            list_.warnings.push_back(
                fmt::format("prices in {} and {} are not compared; {} comes first", currency_, other, currency_));
    }

    /// Rows by the ware they are bought as, so that two that come out of one kind of pack are bought once.
    std::map<Ware, std::vector<Row*>> group() {
        std::map<Ware, std::vector<Row*>> groups;
        for (auto& row : rows_) {
            if (row.to_buy.measure.is_zero()) continue;
            auto purchase = cheapest(offers_, row.to_buy, currency_);
            if (!purchase) purchase = cheapest_instead(model_, offers_, row.to_buy, currency_);
            if (purchase)
                groups[purchase->offer.pack.ware].push_back(&row);
            else
                say_unsold(row);
        }
        return groups;
    }

    void buy_together(const Ware& ware, const std::vector<Row*>& buyers) {
        Exact total;
        for (Row* row : buyers) total += bought_as(*row, ware);
        const auto purchase = cheapest(offers_, {ware, total}, currency_);
        if (!purchase) {
            for (const Row* row : buyers) say_unsold(*row);
            return;
        }
        const auto own = std::ranges::find_if(buyers, [&](const Row* row) { return row->to_buy.ware == ware; });
        Row& payer = own == buyers.end() ? *buyers.front() : **own;
        for (Row* row : buyers) {
            row->need.supplier = purchase->offer.supplier->name;
            row->need.pack = purchase->offer.price->pack_text;
            row->need.currency = purchase->offer.price->price.currency;
            if (row != &payer) row->need.because.push_back("bought together with " + title_of(payer));
        }
        pay(payer, *purchase);
    }

    /// How much of the ware the row needs; notes it where it is not the one that was asked for.
    Exact bought_as(Row& row, const Ware& ware) const {
        Exact measure = row.to_buy.measure * in_place_of(model_, row.to_buy.ware, ware).value_or(0);
        if (row.to_buy.ware == ware) return measure;
        row.need.buy_form = form_words(model_, ware);
        if (row.need.buy_form.empty()) row.need.buy_form = model_.chemicals[ware.chemical].forms[ware.form].name;
        row.need.to_buy_as = rounded_up(measure, ware.by_volume);
        return measure;
    }

    void pay(Row& row, const Purchase& purchase) {
        row.need.packs = purchase.packs;
        row.need.cost = purchase.cost;
        row.need.left_over = rounded_down(purchase.left, purchase.offer.pack.ware.by_volume);
        totals_[row.need.currency] += purchase.cost;
        goods_[purchase.offer.supplier][row.need.currency] += purchase.cost;
    }

    [[nodiscard]] static std::string title_of(const Row& row) {
        return row.need.form_name.empty() ? row.need.name : row.need.name + " (" + row.need.form_name + ")";
    }

    void say_unsold(const Row& row) {
        list_.warnings.push_back(fmt::format("no supplier in the workspace sells {}; to buy: {}{}", title_of(row),
                                             row.need.to_buy.with_unit(), made_words(row)));
    }

    /// A conversion whose reagents are all on hand or sold.
    [[nodiscard]] std::string made_words(const Row& row) const {
        for (const Way& way : conversions_to(model_, {&stock_, &offers_}, row.to_buy))
            if (way.supply <= Way::Supply::to_buy)
                return fmt::format("; it can be {}, with `by conversion` behind its line", way_words(model_, way));
        return {};
    }

    // ---- what it costs ----

    void add_postage() {
        for (const auto& supplier : model_.suppliers) {
            const auto goods = goods_.find(&supplier);
            if (goods == goods_.end() || !supplier.postage || goes_free(supplier, goods->second)) continue;
            const std::string currency(supplier.postage->currency);
            list_.postage.push_back({std::string(supplier.name), supplier.postage->value, currency});
            totals_[currency] += supplier.postage->value;
        }
    }

    [[nodiscard]] static bool goes_free(const Supplier& supplier, const std::map<std::string, Exact>& goods) {
        if (!supplier.free_over) return false;
        const auto sum = goods.find(std::string(supplier.free_over->currency));
        return sum != goods.end() && sum->second >= supplier.free_over->value;
    }

    const Model& model_;
    Stock& stock_;
    const std::vector<Offer>& offers_;
    ShoppingList& list_;
    std::string_view currency_;
    std::vector<Row> rows_;
    std::map<std::string, Exact> totals_;
    std::map<const Supplier*, std::map<std::string, Exact>> goods_;
};

}  // namespace

void buy(const Model& model, const std::vector<ChemicalWanted>& wanted, Stock& stock, const std::vector<Offer>& offers,
         ShoppingList& list) {
    Buyer(model, stock, offers, list).run(wanted);
}

}  // namespace scruple::plan
