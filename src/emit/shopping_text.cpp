// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "layout.hpp"
#include "scruple/emit/shopping_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/text/source.hpp"

namespace scruple::emit {
namespace {

using plan::ChemicalNeed;
using plan::ShoppingList;
using words::Errand;

std::string name_of(const ChemicalNeed& need) {
    return words::chemical(need.name, need.form_name);
}

void because(Sheet& sheet, std::size_t indent, const std::vector<std::string>& reasons) {
    for (const std::string& reason : reasons) sheet.item(std::string(indent, ' ') + "- ", reason);
}

void solutions(Sheet& sheet, const ShoppingList& list) {
    if (list.solutions.empty()) return;
    sheet.heading(words::mix_heading);
    AmountColumn amounts;
    for (const plan::SolutionNeed& need : list.solutions) amounts.make_room(need.to_mix.text, need.to_mix.unit);
    for (const plan::SolutionNeed& need : list.solutions) {
        sheet.item(amounts.line(need.to_mix.text, need.to_mix.unit) + "   ", need.name);
        sheet.indented(amounts.width() + 3, words::reckoning(need));
        because(sheet, amounts.width() + 3, need.because);
        sheet.blank();
    }
}

void errand(Sheet& sheet, const ChemicalNeed& need, std::size_t column) {
    const bool bought = words::errand_of(need) == Errand::buy;
    const std::string lead = bought ? "□  " + padded_left(words::packs(need), column) + "   " : "";
    const std::size_t indent = bought ? column + 6 : 2;
    const bool paid = bought && !words::comes_along(need);
    sheet.item(lead, name_of(need), paid ? words::money(need.cost, need.currency) : "");
    if (paid) sheet.indented(indent, words::from_whom(need));
    const std::string other = words::other_form(need);
    if (!other.empty()) sheet.indented(indent, other);
    sheet.indented(indent, words::reckoning(need));
    for (const std::string& line : words::why_packs(need)) sheet.indented(indent, line);
    because(sheet, indent, need.because);
    sheet.blank();
}

void errands(Sheet& sheet, const ShoppingList& list, Errand which, std::string_view heading) {
    std::size_t column = 0;
    bool any = false;
    for (const ChemicalNeed& need : list.chemicals) {
        if (words::errand_of(need) != which) continue;
        any = true;
        column = std::max(column, text::display_width(words::packs(need)));
    }
    if (!any) return;
    sheet.heading(heading);
    for (const ChemicalNeed& need : list.chemicals)
        if (words::errand_of(need) == which) errand(sheet, need, column);
}

void sums(Sheet& sheet, const ShoppingList& list) {
    if (list.postage.empty() && list.totals.empty()) return;
    sheet.heading(words::cost_heading);
    for (const plan::PostageRow& row : list.postage)
        sheet.item("", "postage from " + row.supplier, words::money(row.cost, row.currency));
    for (const auto& [currency, cost] : list.totals) sheet.item("", "all together", words::money(cost, currency));
}

void use_costs(Sheet& sheet, const ShoppingList& list) {
    if (list.use_costs.empty()) return;
    sheet.heading(words::use_cost_heading);
    for (const auto& cost : list.use_costs) {
        sheet.item("", words::use_head(cost), words::use_cost(cost.cost, cost.currency));
        for (const std::string& line : words::use_details(cost)) sheet.indented(2, line);
    }
    sheet.item("", words::use_cost_rule);
}

void compared(Sheet& sheet, const ShoppingList& list) {
    for (const auto& one : list.compared) {
        sheet.heading(words::compared_heading(one));
        for (const std::string& line : one.lines) sheet.item("- ", line);
    }
}

void waste(Sheet& sheet, const ShoppingList& list) {
    if (list.waste.empty()) return;
    sheet.heading(words::waste_heading);
    for (const plan::WasteRow& row : list.waste) sheet.item("", words::waste(row), row.volume.with_unit());
    sheet.item("", std::string(words::waste_rule));
}

}  // namespace

std::string shopping_text(const plan::ShoppingList& list, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", words::shopping_title(list));
    sheet.item("", fmt::format("{} to {}", list.first_day, list.last_day));
    compared(sheet, list);
    solutions(sheet, list);
    errands(sheet, list, Errand::buy, words::buy_heading);
    errands(sheet, list, Errand::nobody_sells, words::nobody_sells_heading);
    errands(sheet, list, Errand::enough, words::enough_heading);
    sums(sheet, list);
    use_costs(sheet, list);
    waste(sheet, list);
    if (!list.warnings.empty()) sheet.heading(words::warnings_heading);
    for (const std::string& warning : list.warnings) sheet.item("! ", warning);
    return sheet.take();
}

}  // namespace scruple::emit
