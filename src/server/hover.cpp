// SPDX-License-Identifier: MIT
// What stands under the pointer: a chemical, a solution, a line and what is in the vessel after it.
#include <fmt/format.h>

#include "markdown.hpp"
#include "requests.hpp"
#include "solution.hpp"

namespace scruple::server {
namespace {

using check::Chemical;
using check::Model;
using check::Section;

std::string four(double value) {
    return quantity::significant_text(value, 4);
}

std::string form_line(const Chemical& chemical, const check::Form& form) {
    const std::string name = chemical.forms.size() > 1 ? fmt::format("{}: ", markdown(form.name)) : std::string();
    const std::string strength = form.sold_as ? ", " + markdown(check::shown_strength(*form.sold_as)) : std::string();
    return fmt::format("- {}{}, {} g/mol{}\n", name, markdown_code(form.formula_text),
                       four(form.molar_mass.to_double()), strength);
}

std::string about(const Chemical& chemical) {
    std::string text = fmt::format("**{}**\n\n", markdown(chemical.name));
    for (const check::Form& form : chemical.forms) text += form_line(chemical, form);
    text += fmt::format("\nHazard statements: {}. Check the safety data sheet.\n",
                        chemical.hazards.empty() ? "no caution recorded"
                                                 : markdown(fmt::format("{}", fmt::join(chemical.hazards, ", "))));
    return text;
}

std::string held_table(const Model& model, const std::vector<check::Content>& contents) {
    std::string text = "| | g/l | mol/l |\n|---|---:|---:|\n";
    for (const check::Content& content : contents)
        text += fmt::format("| {} | {} | {} |\n",
                            markdown(check::shown_name(model.chemicals[content.chemical], content.form)),
                            four(content.g_per_l), four(content.mol_per_l));
    return contents.empty() ? "" : text;
}

std::string about(const Model& model, check::Id section) {
    const auto contents = check::contents(model, section, 0);
    return fmt::format("**{}**\n\n{}\n{}\n", markdown(check::shown_name(model, section)), held_table(model, contents),
                       markdown(ph_words(model, contents)));
}

/// `5 g, 0.0145 mol; 5 g/l when made up`
std::string amount_words(const Model& model, const LineOf& at, const check::Addition& addition) {
    std::string text = addition.written.empty() ? "" : markdown(addition.written);
    if (const std::string moles = moles_of(model, addition); !moles.empty()) text += (text.empty() ? "" : ", ") + moles;
    for (const check::Content& content : check::contents(model, at.section, 0))
        if (content.chemical == addition.chemical && content.form == addition.form)
            text += fmt::format("; {} g/l, {} mol/l in the finished solution", four(content.g_per_l),
                                four(content.mol_per_l));
    return text;
}

/// The solution as it stands after the line: put into the model for as long as its contents are worked out.
std::string so_far_words(Model& model, const LineOf& at) {
    auto some = so_far(model, at);
    if (!some) return {};
    Section& here = model.sections[at.section];
    std::swap(here, *some);
    const auto contents = check::contents(model, at.section, 0);
    const std::string ph = contents.empty() ? "" : ", " + markdown(ph_words(model, contents));
    std::string text = fmt::format("so far: {} ml{}", four(here.makes_ml.to_double()), ph);
    std::swap(here, *some);
    return text;
}

std::string about_line(Model& model, const LineOf& at) {
    std::string text;
    if (const auto* addition = std::get_if<check::Addition>(&model.sections[at.section].lines[at.line]))
        text = amount_words(model, at, *addition);
    const std::string running = so_far_words(model, at);
    return text.empty() || running.empty() ? text + running : text + "\n\n" + running;
}

std::string about_name(const Model& model, const Occurrence& it) {
    const std::string name = it.key.substr(1);
    if (it.key.front() != '0' + static_cast<char>(Space::substance)) return {};
    if (const auto found = model.chemical_names.find(name); found != model.chemical_names.end())
        return about(model.chemicals[found->second.first]);
    const auto section = model.section_names.find(name);
    return section == model.section_names.end() ? "" : about(model, section->second);
}

}  // namespace

Json hover(Workspace& workspace, const Json& params) {
    workspace.settle();
    const Asked about_it = asked(workspace, params);
    View& view = workspace.view_of(about_it.number);
    Model& model = view.model();
    std::string text;
    const Occurrence* name = occurrence_at(*about_it.file, about_it.offset);
    if (name != nullptr) text = about_name(model, *name);
    const auto statement = statement_at(*about_it.file, about_it.positions, about_it.offset);
    const auto at =
        statement == syntax::nowhere ? std::nullopt : line_at(model, view.source_of(about_it.number), statement);
    if (at) text += (text.empty() ? "" : "\n---\n\n") + about_line(model, *at);
    if (text.empty()) return nullptr;
    Json result{{"contents", {{"kind", "markdown"}, {"value", text}}}};
    if (name != nullptr) result["range"] = to_json(about_it.positions.range(name->span));
    return result;
}

}  // namespace scruple::server
