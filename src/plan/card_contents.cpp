// SPDX-License-Identifier: MIT
#include "card_facts.hpp"
#include "scruple/check/ph.hpp"
#include "words.hpp"

namespace scruple::plan {

using check::Content;
using check::Model;

std::vector<ContentRow> content_rows(const Model& model, const std::vector<Content>& contents) {
    std::vector<ContentRow> rows;
    for (const Content& content : contents) {
        const check::Chemical& chemical = model.chemicals[content.chemical];
        rows.push_back({std::string(chemical.name), form_name(chemical, content.form), content.g_per_l,
                        content.mol_per_l, content.give_or_take});
    }
    return rows;
}

double celsius_of(const CardRequest& request) {
    return request.at_celsius ? request.at_celsius->to_double() : check::usual_celsius;
}

std::optional<PhRow> ph_row(const Model& model, const std::vector<Content>& contents, double celsius) {
    if (contents.empty()) return std::nullopt;
    PhRow row;
    row.celsius = celsius;
    const auto found = check::ph_of(model, contents, celsius);
    if (const auto* none = std::get_if<check::NoPh>(&found)) {
        row.text = "none is given: " + none->why;
        return row;
    }
    const auto& ph = std::get<check::Ph>(found);
    row.value = ph.value;
    row.low = ph.low;
    row.high = ph.high;
    row.text = shown(ph.value, ph) + " (" + shown(ph.low, ph) + " to " + shown(ph.high, ph) + ")";
    row.widened_by = ph.widened_by;
    return row;
}

}  // namespace scruple::plan
