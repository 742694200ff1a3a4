// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/shopping_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::ChemicalNeed;
using plan::ShoppingList;
using words::Errand;

Markup amount_of(std::string_view amount, std::string_view what) {
    Markup line = element("span", "class=\"amount\"", amount);
    line += element("span", "class=\"what\"", what);
    return line;
}

Markup errands(std::string_view heading, const Markup& items) {
    return items.text.empty() ? items : html::section(heading, element("ul", "class=\"errands\"", items));
}

Markup solutions(const ShoppingList& list) {
    Markup all;
    for (const plan::SolutionNeed& need : list.solutions) {
        Markup one = element("p", amount_of(need.to_mix.with_unit(), need.name));
        one += element("p", words::reckoning(need));
        one += html::list(need.because);
        all += element("li", one);
    }
    return errands(words::mix_heading, all);
}

Markup errand(const ChemicalNeed& need) {
    const bool bought = words::errand_of(need) == Errand::buy;
    const std::string name = words::chemical(need.name, need.form_name);
    Markup line = bought ? html::box("") : element("span", "class=\"what\"", name);
    if (bought) line += amount_of(words::packs(need), name);
    Markup all = element("p", line);
    if (bought && !words::comes_along(need))
        all += element("p", fmt::format("{}, {}", words::from_whom(need), words::money(need.cost, need.currency)));
    const std::string other = words::other_form(need);
    if (!other.empty()) all += element("p", other);
    all += element("p", words::reckoning(need));
    for (const std::string& line : words::why_packs(need)) all += element("p", line);
    all += html::list(need.because);
    return element("li", all);
}

Markup errands(const ShoppingList& list, Errand which, std::string_view heading) {
    Markup all;
    for (const ChemicalNeed& need : list.chemicals)
        if (words::errand_of(need) == which) all += errand(need);
    return errands(heading, all);
}

Markup sums(const ShoppingList& list) {
    html::Table table({"what", "cost"}, 1);
    for (const plan::PostageRow& row : list.postage)
        table.row({"postage from " + row.supplier, words::money(row.cost, row.currency)});
    for (const auto& [currency, cost] : list.totals) table.row({"all together", words::money(cost, currency)});
    return html::section(words::cost_heading, table.take());
}

Markup use_costs(const ShoppingList& list) {
    if (list.use_costs.empty()) return {};
    html::Table table({"what", "of each bath", "cost"}, 1);
    for (const auto& cost : list.use_costs)
        table.row({words::use_head(cost), words::listed(words::use_details(cost), "; "),
                   words::use_cost(cost.cost, cost.currency)});
    Markup all = table.take();
    all += element("p", words::use_cost_rule);
    return html::section(words::use_cost_heading, all);
}

Markup waste(const ShoppingList& list) {
    if (list.waste.empty()) return {};
    html::Table table({"what", "volume"}, 1);
    for (const plan::WasteRow& row : list.waste) table.row({words::waste(row), row.volume.with_unit()});
    Markup all = table.take();
    all += element("p", words::waste_rule);
    return html::section(words::waste_heading, all);
}

}  // namespace

std::string shopping_html(const plan::ShoppingList& list) {
    const std::string title = words::shopping_title(list);
    Markup all = element("h1", title);
    all += element("p", fmt::format("{} to {}", list.first_day, list.last_day));
    for (const auto& one : list.compared) all += html::section(words::compared_heading(one), html::list(one.lines));
    all += solutions(list);
    all += errands(list, Errand::buy, words::buy_heading);
    all += errands(list, Errand::nobody_sells, words::nobody_sells_heading);
    all += errands(list, Errand::enough, words::enough_heading);
    all += sums(list);
    all += use_costs(list);
    all += waste(list);
    all += html::section(words::warnings_heading, html::list(list.warnings));
    return html::page(title, element("main", element("article", all)));
}

}  // namespace scruple::emit
