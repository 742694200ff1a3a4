// SPDX-License-Identifier: MIT
// What stands on bottles, in all three ways.
#include <fmt/format.h>

#include "accepted.hpp"
#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Label;

std::string title(const Label& label) {
    return words::listed({label.recipe, label.section, label.variant});
}

void add_label(Sheet& sheet, const Label& label) {
    sheet.blank();
    sheet.item("", title(label), label.is_a);
    sheet.item("", words::label_strength(label));
    for (const auto& [what, value] : words::label_facts(label))
        sheet.item("", what, value.empty() ? "______________" : value);
    sheet.blank();
    if (!label.accepted.empty()) sheet.item("! ", words::label_accepted(label));
    sheet.item("", words::label_hazards);
    for (const plan::LabelHazard& hazard : label.hazards)
        sheet.item("  ", words::label_chemical(hazard) + words::label_statements(hazard));
    sheet.item("", words::label_reminder);
    sheet.blank();
}

Markup article(const Label& label) {
    Markup all = element("h1", title(label));
    all += element("p", label.is_a);
    all += element("p", "class=\"makes\"", words::label_strength(label));
    for (const auto& [what, value] : words::label_facts(label))
        all += element("p", value.empty() ? html::to_write(what) : html::words(fmt::format("{} {}", what, value)));
    std::vector<std::string> hazards;
    for (const plan::LabelHazard& hazard : label.hazards)
        hazards.push_back(words::label_chemical(hazard) + words::label_statements(hazard));
    Markup cautions;
    if (!label.accepted.empty()) cautions += element("p", element("b", words::label_accepted(label)));
    cautions += element("p", words::label_hazards);
    cautions += html::list(hazards);
    cautions += element("p", words::label_reminder);
    all += element("section", "class=\"cautions\"", cautions);
    return element("article", all);
}

json::Value hazard_json(const plan::LabelHazard& hazard) {
    json::Value all;
    all["chemical"] = hazard.chemical;
    all["signal"] = json::text_or_null(hazard.signal);
    all["statements"] = hazard.statements;
    all["said"] = hazard.statements.empty() ? json::Value(words::label_statements(hazard)) : json::Value(nullptr);
    return all;
}

json::Value life_json(const plan::Life& life) {
    json::Value all;
    all["keeps"] = life.text;
    all["use_by"] = life.use_by ? json::Value(plan::day_text(*life.use_by)) : json::Value(nullptr);
    return all;
}

json::Value label_json(const Label& label) {
    json::Value all;
    all["recipe"] = label.recipe;
    all["section"] = json::text_or_null(label.section);
    all["variant"] = json::text_or_null(label.variant);
    all["is_a"] = json::text_or_null(label.is_a);
    all["strength"] = label.strength;
    all["uses"] = label.uses;
    all["mixed_on"] = label.mixed_on ? json::Value(plan::day_text(*label.mixed_on)) : json::Value(nullptr);
    all["keeps"] = json::each(label.keeps, life_json);
    all["use_within"] = json::text_or_null(label.use_within);
    all["batch"] = json::text_or_null(label.batch);
    all["volume"] = label.volume ? json::figure(*label.volume) : json::Value(nullptr);
    all["tally"] = label.tally;
    all["hazards"] = json::each(label.hazards, hazard_json);
    all["accepted"] = accepted_json(label.accepted);
    all["digest"] = label.digest;
    all["code"] = plan::label_code(label);
    return all;
}

}  // namespace

std::string labels_text(std::span<const Label> labels, const TextStyle& style) {
    Sheet sheet(style);
    for (const Label& label : labels) add_label(sheet, label);
    return sheet.take();
}

std::string labels_html(std::span<const Label> labels) {
    Markup all;
    for (const Label& label : labels) all += article(label);
    return html::page("Bottle labels", element("main", all));
}

std::string labels_json(std::span<const Label> labels) {
    json::Value all;
    all["kind"] = "labels";
    all["labels"] = json::each(labels, label_json);
    all["reminder"] = words::label_reminder;
    return json::document(all);
}

}  // namespace scruple::emit
