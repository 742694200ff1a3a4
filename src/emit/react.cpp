// SPDX-License-Identifier: MIT
// A reaction worked out, in all three ways.
#include <fmt/format.h>

#include "cautions.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Reacted;

std::string about_numbers(const Reacted& reacted) {
    return reacted.numbers_found ? "the numbers were found here: none were given, and these are the only ones"
                                 : "balances as it is written";
}

/// `sodium hydroxide limits: nothing is left of it`
std::string limits(const Reacted& reacted) {
    std::vector<std::string> names;
    for (const Reacted::Reagent& reagent : reacted.reagents)
        if (reagent.limits) names.push_back(reagent.what.name);
    if (names.empty()) return "no amounts were given: for one mole of the reaction as written";
    return fmt::format("{} {}: nothing is left of {}", words::listed(names, " and "),
                       names.size() > 1 ? "limit" : "limits", names.size() > 1 ? "them" : "it");
}

std::vector<std::string> about(const Reacted::Reagent& reagent) {
    std::vector<std::string> all{reagent.mol.with_unit()};
    if (!reagent.taken) all.emplace_back("as much as is needed");
    if (reagent.limits) all.emplace_back("limits");
    for (std::size_t i = 0; i < reagent.left_over.size(); ++i)
        all.push_back(fmt::format("left over: {} {}", reagent.left_over[i].with_unit(), reagent.left_names[i]));
    if (reagent.excess_percent) all.push_back(fmt::format("{} more than is used", reagent.excess_percent->with_unit()));
    return all;
}

std::vector<std::string> about(const Reacted::Product& product) {
    std::vector<std::string> all{product.mol.with_unit()};
    if (product.gas) all.push_back(fmt::format("given off: {} at 25\u00A0°C and 1\u00A0atm", product.gas->with_unit()));
    return all;
}

void row(Sheet& sheet, const AmountColumn& amounts, const plan::Figure& figure, const plan::Substance& what,
         const std::vector<std::string>& more) {
    sheet.item(amounts.line(figure.text, figure.unit) + "   ", what.name);
    for (const std::string& line : more) sheet.indented(amounts.width() + 3, line);
}

json::Value figure_or_null(const std::optional<plan::Figure>& figure) {
    return figure ? json::figure(*figure) : json::Value(nullptr);
}

json::Value substance(const plan::Substance& what, const quantity::Exact& number) {
    json::Value all;
    all["name"] = what.name;
    all["formula"] = what.formula_text;
    all["number"] = json::number(number, 0);
    return all;
}

json::Value reagent_json(const Reacted::Reagent& reagent) {
    json::Value all = substance(reagent.what, reagent.number);
    all["taken"] = reagent.taken;
    all["limits"] = reagent.limits;
    all["mol"] = json::number(reagent.mol.text);
    all["used"] = json::figure(reagent.used);
    all["left_over"] = json::Value::array();
    for (std::size_t i = 0; i < reagent.left_over.size(); ++i) {
        json::Value left;
        left["name"] = reagent.left_names[i];
        left["amount"] = json::figure(reagent.left_over[i]);
        all["left_over"].push_back(std::move(left));
    }
    all["excess"] = figure_or_null(reagent.excess_percent);
    return all;
}

json::Value product_json(const Reacted::Product& product) {
    json::Value all = substance(product.what, product.number);
    all["mol"] = json::number(product.mol.text);
    all["made"] = json::figure(product.made);
    all["gas"] = figure_or_null(product.gas);
    return all;
}

AmountColumn amounts_of(const Reacted& reacted) {
    AmountColumn amounts;
    for (const auto& reagent : reacted.reagents) amounts.make_room(reagent.used.text, reagent.used.unit);
    for (const auto& product : reacted.products) amounts.make_room(product.made.text, product.made.unit);
    return amounts;
}

Markup tables(const Reacted& reacted) {
    html::Table used({"what", "more", "used"}, 1);
    for (const auto& one : reacted.reagents)
        used.row({one.what.name, words::listed(about(one), "; "), one.used.with_unit()});
    html::Table made({"what", "more", "made"}, 1);
    for (const auto& one : reacted.products)
        made.row({one.what.name, words::listed(about(one), "; "), one.made.with_unit()});
    Markup all = html::section("Used", used.take());
    all += html::section("Made, at most", made.take());
    return all;
}

}  // namespace

std::string react_text(const Reacted& reacted, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", reacted.reaction);
    sheet.item("", about_numbers(reacted));
    sheet.blank();
    sheet.item("", limits(reacted));
    const AmountColumn amounts = amounts_of(reacted);
    sheet.heading("Used");
    for (const auto& reagent : reacted.reagents) row(sheet, amounts, reagent.used, reagent.what, about(reagent));
    sheet.heading("Made, at most");
    for (const auto& product : reacted.products) row(sheet, amounts, product.made, product.what, about(product));
    sheet.heading("The sum on paper");
    for (const std::string& line : reacted.lines) sheet.item("- ", line);
    add_cautions(sheet, reacted.cautions, reacted.hazards);
    return sheet.take();
}

std::string react_html(const Reacted& reacted) {
    Markup all = element("h1", reacted.reaction);
    all += element("p", about_numbers(reacted));
    all += element("p", element("b", limits(reacted)));
    all += tables(reacted);
    all += html::section("The sum on paper", html::list(reacted.lines));
    all += cautions_html(reacted.cautions, reacted.hazards);
    return html::page(reacted.reaction, element("main", element("article", all)));
}

std::string react_json(const Reacted& reacted) {
    json::Value all;
    all["kind"] = "react";
    all["reaction"] = reacted.reaction;
    all["numbers_found"] = reacted.numbers_found;
    all["reagents"] = json::each(reacted.reagents, reagent_json);
    all["products"] = json::each(reacted.products, product_json);
    all["lines"] = reacted.lines;
    all["cautions"] = cautions_json(reacted.cautions);
    all["hazards"] = hazards_json(reacted.hazards);
    all["reminder"] = words::check_the_sheet;
    return json::document(all);
}

}  // namespace scruple::emit
