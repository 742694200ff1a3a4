// SPDX-License-Identifier: MIT
// What solutions hold, in all three ways.
#include <fmt/format.h>

#include "held.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::ContentsSheet;
using plan::SpeciesRow;

constexpr std::string_view species_heading = "Taken apart";
constexpr std::string_view same_heading = "The same solution";
constexpr std::string_view taken_apart =
    "Every salt as if it fell into its ions whole. What acids and bases then do to each other is not reckoned in.";

std::string title(const ContentsSheet& sheet) {
    return words::listed({sheet.recipe, sheet.section, sheet.variant.empty() ? "" : "variant " + sheet.variant});
}

std::string two_figures(double g_per_l, double mol_per_l) {
    return fmt::format("{:>10}   {:>10}", words::table_figure(g_per_l), words::table_figure(mol_per_l));
}

std::vector<std::string> same_lines(const ContentsSheet& sheet) {
    std::vector<std::string> lines;
    for (const plan::SameSolution& same : sheet.same)
        lines.push_back(
            fmt::format("{}, to within {}\u00A0%, {}", same.name, quantity::significant_text(same.percent_apart, 2),
                        same.of_the_same_chemicals ? "of the same chemicals"
                                                   : "of other chemicals, once they have settled in the water"));
    if (lines.empty())
        lines.push_back(fmt::format("No other solution of these recipes is the same to within {}\u00A0%.",
                                    plan::most_percent_apart));
    return lines;
}

void add_species(Sheet& sheet, const std::vector<SpeciesRow>& species) {
    sheet.heading(species_heading);
    sheet.item("", "", fmt::format("{:>10}   {:>10}", "g/l", "mol/l"));
    for (const SpeciesRow& row : species) sheet.item("", row.name, two_figures(row.g_per_l, row.mol_per_l));
}

void add_sheet(Sheet& sheet, const ContentsSheet& contents) {
    sheet.blank();
    sheet.item("", title(contents));
    sheet.heading(words::held_heading);
    add_held(sheet, contents.chemicals, contents.ph);
    add_species(sheet, contents.species);
    sheet.blank();
    sheet.item("", taken_apart);
    sheet.heading(same_heading);
    for (const std::string& line : same_lines(contents)) sheet.item("- ", line);
    if (contents.left_out.empty()) return;
    sheet.heading("Left out");
    for (const std::string& line : contents.left_out) sheet.item("- ", line);
}

Markup article(const ContentsSheet& contents) {
    html::Table species({"what", "g/l", "mol/l"}, 2);
    for (const SpeciesRow& row : contents.species)
        species.row({row.name, words::table_figure(row.g_per_l), words::table_figure(row.mol_per_l)});
    Markup apart = species.take();
    apart += element("p", taken_apart);
    Markup all = element("h1", title(contents));
    all += html::section(words::held_heading, held_html(contents.chemicals, contents.ph));
    all += html::section(species_heading, apart);
    all += html::section(same_heading, html::list(same_lines(contents)));
    all += html::section("Left out", html::list(contents.left_out));
    return element("article", all);
}

json::Value species_json(const SpeciesRow& row) {
    json::Value all;
    all["name"] = row.name;
    all["ion"] = row.ion;
    all["g_per_l"] = json::number(words::table_figure(row.g_per_l));
    all["mol_per_l"] = json::number(words::table_figure(row.mol_per_l));
    return all;
}

json::Value same_json(const plan::SameSolution& same) {
    json::Value all;
    all["solution"] = same.name;
    all["percent_apart"] = json::number(quantity::significant_text(same.percent_apart, 2));
    all["of_the_same_chemicals"] = same.of_the_same_chemicals;
    return all;
}

json::Value sheet_json(const ContentsSheet& sheet) {
    json::Value all;
    all["recipe"] = sheet.recipe;
    all["section"] = json::text_or_null(sheet.section);
    all["variant"] = json::text_or_null(sheet.variant);
    all["chemicals"] = json::each(sheet.chemicals, content_json);
    all["ph"] = ph_json(sheet.ph);
    all["species"] = json::each(sheet.species, species_json);
    all["same"] = json::each(sheet.same, same_json);
    all["left_out"] = sheet.left_out;
    return all;
}

}  // namespace

std::string contents_text(std::span<const ContentsSheet> sheets, const TextStyle& style) {
    Sheet sheet(style);
    for (const ContentsSheet& one : sheets) add_sheet(sheet, one);
    return sheet.take();
}

std::string contents_html(std::span<const ContentsSheet> sheets) {
    Markup all;
    for (const ContentsSheet& one : sheets) all += article(one);
    return html::page(sheets.size() == 1 ? title(sheets[0]) : "What is in them", element("main", all));
}

std::string contents_json(std::span<const ContentsSheet> sheets) {
    json::Value all;
    all["kind"] = "contents";
    all["within_percent"] = plan::most_percent_apart;
    all["solutions"] = json::each(sheets, sheet_json);
    return json::document(all);
}

}  // namespace scruple::emit
