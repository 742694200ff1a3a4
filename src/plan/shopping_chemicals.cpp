// SPDX-License-Identifier: MIT
// From chemicals wanted to what is on hand of them, and what is to be bought.
#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <tuple>

#include "ingredients.hpp"
#include "shopping_steps.hpp"
#include "ways.hpp"

namespace scruple::plan {

using check::Exact;
using check::Model;

namespace {

std::string measure_of(const Ware& ware, const Exact& measure) {
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
        std::ranges::sort(rows_, {},
                          [](const ShoppingRow& row) { return std::tie(row.need.name, row.need.form_name); });
        std::vector<Exact> on_hand;
        for (auto& row : rows_) on_hand.push_back(take_its_own(row));
        for (std::size_t i = 0; i < rows_.size(); ++i) take_what_else_there_is(rows_[i], on_hand[i]);
        choose_packs(model_, offers_, currency_, rows_, list_);
        for (auto& row : rows_) say_unsold(row);
        for (auto& row : rows_) list_.chemicals.push_back(std::move(row.need));
    }

  private:
    // ---- what there is ----

    [[nodiscard]] ShoppingRow row_of(const ChemicalWanted& wanted) const {
        const Ware& ware = wanted.amount.ware;
        ShoppingRow row{wanted.amount, {}};
        row.need.chemical = ware.chemical;
        row.need.form = ware.form;
        row.need.name = model_.chemicals[ware.chemical].name;
        row.need.form_name = wanted.grade.empty() ? form_words(model_, ware) : std::string(wanted.grade);
        row.need.needed = rounded_up(wanted.amount.measure, ware.by_volume);
        if (const auto& keeps = model_.chemicals[ware.chemical].keeps) row.need.keeps = keeps->text;
        row.need.because = wanted.because;
        return row;
    }

    Exact take_its_own(ShoppingRow& row) {
        Exact there_was = held(stock_, row.to_buy.ware);
        row.to_buy.measure -= take_own(stock_, row.to_buy);
        return there_was;
    }

    void take_what_else_there_is(ShoppingRow& row, Exact on_hand) {
        const Ware& asked = row.to_buy.ware;
        for (const auto& taking : take_others(model_, stock_, row.to_buy)) {
            on_hand += taking.as_asked;
            row.to_buy.measure -= taking.as_asked;
            row.need.because.push_back(fmt::format("{} {} on hand does for {}", measure_of(taking.from, taking.measure),
                                                   ware_words(model_, taking.from),
                                                   measure_of(asked, taking.as_asked)));
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

    void say_unsold(const ShoppingRow& row) {
        if (row.to_buy.measure.is_zero() || !row.need.packs.empty() || !row.need.along_with.empty()) return;
        list_.warnings.push_back(fmt::format("no supplier in the workspace sells {}; to buy: {}{}", title_of(row.need),
                                             row.need.to_buy.with_unit(), made_words(row)));
    }

    /// A conversion whose reagents are all on hand or sold.
    [[nodiscard]] std::string made_words(const ShoppingRow& row) const {
        for (const Way& way : conversions_to(model_, {&stock_, &offers_}, row.to_buy))
            if (way.supply <= Way::Supply::to_buy)
                return fmt::format("; it can be {}, with `by conversion` behind its line", way_words(model_, way));
        return {};
    }

    const Model& model_;
    Stock& stock_;
    const std::vector<Offer>& offers_;
    ShoppingList& list_;
    std::string_view currency_;
    std::vector<ShoppingRow> rows_;
};

}  // namespace

std::string title_of(const ChemicalNeed& need) {
    return need.form_name.empty() ? need.name : need.name + " (" + need.form_name + ")";
}

void buy(const Model& model, const std::vector<ChemicalWanted>& wanted, Stock& stock, const std::vector<Offer>& offers,
         ShoppingList& list) {
    Buyer(model, stock, offers, list).run(wanted);
}

}  // namespace scruple::plan
