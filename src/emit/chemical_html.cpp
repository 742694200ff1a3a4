// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "chemical_words.hpp"
#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using check::Chemical;
using html::element;
using html::Markup;

Markup forms(const Chemical& chemical) {
    html::Table table({"form", "formula", "more", "g/mol"}, 1);
    for (check::Id id = 0; id < chemical.forms.size(); ++id) {
        const check::Form& form = chemical.forms[id];
        table.row({std::string(form.name), std::string(form.formula_text), words::about_form(chemical, id),
                   words::molar_mass(form)});
    }
    return html::section("Forms", table.take());
}

Markup lines(std::string_view heading, const std::vector<std::string>& all) {
    return html::section(heading, html::list(all));
}

Markup hazards(const Chemical& chemical) {
    Markup all = element("h2", "Hazards");
    all += element("p", words::hazards(words::owned(chemical.hazards)));
    if (!chemical.hazard_source.empty()) all += element("p", fmt::format("({})", chemical.hazard_source));
    all += html::list(words::owned(chemical.cautions));
    all += element("p", words::check_the_sheet);
    return element("section", "class=\"cautions\"", all);
}

}  // namespace

std::string chemical_html(const check::Chemical& chemical) {
    Markup all = element("h1", chemical.name);
    if (!chemical.acts_as.empty()) all += element("p", words::listed(words::owned(chemical.acts_as)));
    if (!chemical.cas.empty()) all += element("p", fmt::format("CAS {}", chemical.cas));
    all += forms(chemical);
    all += lines("Also called", words::other_names(chemical));
    all += lines("Grades", words::owned(chemical.grades));
    const std::string ions = words::ions(chemical);
    if (!ions.empty()) all += lines("In water it is", {ions});
    all += lines("In water", words::equilibria(chemical));
    all += lines("Density", words::densities(chemical));
    all += lines("Dissolves", words::solubilities(chemical));
    all += hazards(chemical);
    all += lines("Notes", words::owned(chemical.notes));
    all += lines("From", words::owned(chemical.sources));
    return html::page(chemical.name, element("main", element("article", all)));
}

}  // namespace scruple::emit
