// SPDX-License-Identifier: MIT
// A shopping list as JSON: docs/schemas/shopping.json says what is in it.
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/shopping_words.hpp"

namespace scruple::emit {
namespace {

using json::Value;
using words::Errand;

Value money(const quantity::Exact& cost, const std::string& currency) {
    Value all;
    all["value"] = json::number(cost, 2);
    all["currency"] = currency;
    return all;
}

Value solution_needed(const plan::SolutionNeed& need) {
    Value all;
    all["solution"] = need.name;
    all["needed"] = json::figure(need.needed);
    all["on_hand"] = json::figure(need.on_hand);
    all["to_mix"] = json::figure(need.to_mix);
    all["because"] = need.because;
    return all;
}

Value packs(const plan::PackRow& row) {
    Value all;
    all["supplier"] = row.supplier;
    all["pack"] = row.pack;
    all["count"] = row.count;
    return all;
}

Value next_best(const plan::ChemicalNeed& need) {
    if (!need.next_best) return nullptr;
    Value all;
    all["packs"] = json::each(need.next_best->packs, packs);
    all["more"] = money(need.next_best->more, need.currency);
    return all;
}

Value bought(const plan::ChemicalNeed& need) {
    if (words::errand_of(need) != Errand::buy) return nullptr;
    Value all;
    all["form"] = json::text_or_null(need.buy_form.empty() ? need.form_name : need.buy_form);
    all["amount"] = json::figure(need.buy_form.empty() ? need.to_buy : need.to_buy_as);
    all["packs"] = json::each(need.packs, packs);
    all["along_with"] = json::text_or_null(need.along_with);
    all["cost"] = money(need.cost, need.currency);
    all["left_over"] = json::figure(need.left_over);
    all["keeps"] = json::text_or_null(need.keeps);
    all["filled_up"] = need.filled_up;
    all["next_best"] = next_best(need);
    return all;
}

Value chemical_needed(const plan::ChemicalNeed& need) {
    Value all;
    all["chemical"] = need.name;
    all["form"] = json::text_or_null(need.form_name);
    all["needed"] = json::figure(need.needed);
    all["on_hand"] = json::figure(need.on_hand);
    all["to_buy"] = json::figure(need.to_buy);
    all["buy"] = bought(need);
    all["because"] = need.because;
    return all;
}

Value postage(const plan::PostageRow& row) {
    Value all;
    all["supplier"] = row.supplier;
    all["cost"] = money(row.cost, row.currency);
    return all;
}

Value use_money(const quantity::Exact& cost, const std::string& currency) {
    Value all;
    all["value"] = json::number(cost.to_double());
    all["currency"] = currency;
    return all;
}

Value use_cost(const plan::UseCost& cost) {
    Value all;
    all["process"] = cost.process;
    all["per"] = cost.per;
    all["cost"] = use_money(cost.cost, cost.currency);
    all["baths"] = json::each(cost.baths, [&](const plan::BathCost& one) {
        Value bath;
        bath["solution"] = one.bath;
        bath["cost"] = use_money(one.cost, cost.currency);
        return bath;
    });
    all["unpriced"] = cost.unpriced;
    return all;
}

Value compared(const plan::ListComparison& one) {
    Value all;
    all["with"] = one.with;
    all["lines"] = one.lines;
    return all;
}

Value waste(const plan::WasteRow& row) {
    Value all;
    all["kind"] = row.kind;
    all["volume"] = json::figure(row.volume);
    all["holds_silver"] = row.silver;
    return all;
}

}  // namespace

std::string shopping_json(const plan::ShoppingList& list) {
    Value all;
    all["kind"] = "shopping";
    all["plan"] = list.plan;
    all["from"] = json::text_or_null(list.first_day);
    all["to"] = json::text_or_null(list.last_day);
    all["solutions"] = json::each(list.solutions, solution_needed);
    all["chemicals"] = json::each(list.chemicals, chemical_needed);
    all["postage"] = json::each(list.postage, postage);
    all["totals"] = json::each(list.totals, [](const auto& total) { return money(total.second, total.first); });
    all["use_costs"] = json::each(list.use_costs, use_cost);
    all["compared"] = json::each(list.compared, compared);
    all["waste"] = json::each(list.waste, waste);
    all["warnings"] = list.warnings;
    return json::document(all);
}

}  // namespace scruple::emit
