// SPDX-License-Identifier: MIT
#include "cautions.hpp"

#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

std::string line(const plan::Caution& caution) {
    return words::with_source(caution.text, caution.source);
}

}  // namespace

void add_cautions(Sheet& sheet, const Cautions& cautions, const Hazards& hazards) {
    sheet.heading(words::cautions_heading);
    for (const plan::Caution& caution : cautions) {
        sheet.item("! ", line(caution));
        sheet.blank();
    }
    for (const plan::HazardRow& row : hazards) sheet.item("  ", words::hazard_line(row));
    sheet.indented(2, words::check_the_sheet);
}

html::Markup cautions_html(const Cautions& cautions, const Hazards& hazards) {
    std::vector<std::string> lines;
    for (const plan::Caution& caution : cautions) lines.push_back(line(caution));
    html::Markup all = html::element("h2", words::cautions_heading);
    all += html::list(lines);
    for (const plan::HazardRow& row : hazards) all += html::element("p", words::hazard_line(row));
    all += html::element("p", words::check_the_sheet);
    return html::element("section", "class=\"cautions\"", all);
}

json::Value cautions_json(const Cautions& cautions) {
    return json::each(cautions, [](const plan::Caution& caution) {
        json::Value all;
        all["text"] = caution.text;
        all["source"] = json::text_or_null(caution.source);
        return all;
    });
}

json::Value hazards_json(const Hazards& hazards) {
    return json::each(hazards, [](const plan::HazardRow& row) {
        json::Value all;
        all["chemical"] = row.chemical;
        all["codes"] = row.codes;
        all["said"] = row.codes.empty() ? json::Value(words::hazards(row)) : json::Value(nullptr);
        all["source"] = json::text_or_null(row.source);
        return all;
    });
}

}  // namespace scruple::emit
