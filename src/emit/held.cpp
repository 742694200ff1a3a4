// SPDX-License-Identifier: MIT
#include "held.hpp"

#include <fmt/format.h>

#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::ContentRow;
using plan::PhRow;

constexpr int ph_places = 2;

json::Value rounded(double value, int places) {
    return json::number(fmt::format("{:.{}f}", value, places));
}

}  // namespace

void add_held(Sheet& sheet, const std::vector<ContentRow>& rows, const std::optional<PhRow>& ph) {
    sheet.item("", "", fmt::format("{:>10}   {:>10}   {:>8}", "g/l", "mol/l", "or so"));
    for (const ContentRow& row : rows)
        sheet.item("", words::chemical(row.chemical, row.form),
                   fmt::format("{:>10}   {:>10}   {:>8}", words::table_figure(row.g_per_l),
                               words::table_figure(row.mol_per_l), words::give_or_take(row)));
    if (!ph) return;
    sheet.item("", words::ph_head(*ph), ph->value ? ph->text : "");
    for (const std::string& line : words::ph_remarks(*ph)) sheet.indented(2, line);
}

Markup held_html(const std::vector<ContentRow>& rows, const std::optional<PhRow>& ph) {
    html::Table table({"what", "form", "g/l", "mol/l", "or so"}, 3);
    for (const ContentRow& row : rows)
        table.row({row.chemical, row.form, words::table_figure(row.g_per_l), words::table_figure(row.mol_per_l),
                   words::give_or_take(row)});
    Markup all = table.take();
    if (!ph) return all;
    all += element("p", "class=\"of-volume\"", words::ph_head(*ph) + (ph->value ? " " + ph->text : ""));
    for (const std::string& line : words::ph_remarks(*ph)) all += element("p", "class=\"of-volume\"", line);
    return all;
}

json::Value content_json(const ContentRow& row) {
    json::Value all;
    all["chemical"] = row.chemical;
    all["g_per_l"] = json::number(words::table_figure(row.g_per_l));
    all["mol_per_l"] = json::number(words::table_figure(row.mol_per_l));
    all["give_or_take_percent"] = rounded(row.give_or_take * 100, 2);
    all["form"] = json::text_or_null(row.form);
    return all;
}

json::Value ph_json(const std::optional<PhRow>& row) {
    if (!row) return nullptr;
    const auto figure = [&](double value) { return row->value ? rounded(value, ph_places) : json::Value(nullptr); };
    json::Value all;
    all["value"] = figure(row->value.value_or(0));
    all["low"] = figure(row->low);
    all["high"] = figure(row->high);
    all["at"] = rounded(row->celsius, 1);
    all["text"] = row->text;
    all["widened_by"] = row->widened_by;
    return all;
}

}  // namespace scruple::emit
