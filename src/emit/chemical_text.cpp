// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "chemical_words.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using check::Chemical;

void forms(Sheet& sheet, const Chemical& chemical) {
    sheet.heading("Forms");
    for (check::Id id = 0; id < chemical.forms.size(); ++id) {
        const check::Form& form = chemical.forms[id];
        sheet.item("", fmt::format("{}, {}", form.name, form.formula_text),
                   fmt::format("{} g/mol", words::molar_mass(form)));
        const std::string more = words::about_form(chemical, id);
        if (!more.empty()) sheet.indented(4, more);
    }
}

void lines(Sheet& sheet, std::string_view heading, const std::vector<std::string>& all) {
    if (all.empty()) return;
    sheet.heading(heading);
    for (const std::string& line : all) sheet.item("- ", line);
}

void hazards(Sheet& sheet, const Chemical& chemical) {
    sheet.heading("Hazards");
    sheet.item("", words::hazards(words::owned(chemical.hazards)));
    if (!chemical.hazard_source.empty()) sheet.item("", fmt::format("({})", chemical.hazard_source));
    for (const std::string_view caution : chemical.cautions) sheet.item("! ", caution);
    sheet.item("", words::check_the_sheet);
}

}  // namespace

std::string chemical_text(const check::Chemical& chemical, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", chemical.name, chemical.cas.empty() ? "" : fmt::format("CAS {}", chemical.cas));
    if (!chemical.acts_as.empty()) sheet.item("", words::listed(words::owned(chemical.acts_as)));
    if (!chemical.forms.empty()) forms(sheet, chemical);
    lines(sheet, "Also called", words::other_names(chemical));
    lines(sheet, "Grades", words::owned(chemical.grades));
    const std::string ions = words::ions(chemical);
    if (!ions.empty()) lines(sheet, "In water it is", {ions});
    lines(sheet, "In water", words::equilibria(chemical));
    lines(sheet, "Density", words::densities(chemical));
    lines(sheet, "Dissolves", words::solubilities(chemical));
    hazards(sheet, chemical);
    lines(sheet, "Notes", words::owned(chemical.notes));
    lines(sheet, "From", words::owned(chemical.sources));
    return sheet.take();
}

}  // namespace scruple::emit
