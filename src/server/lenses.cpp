// SPDX-License-Identifier: MIT
// Above each solution what can be done with it: its card, which the command gives as text.
#include <fmt/format.h>

#include "requests.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::server {
namespace {

constexpr std::string_view card_command = "scruple.card";
constexpr int usual_ml = 500;

Json lens(const Asked& about, const check::Model& model, check::Id section) {
    const check::Section& it = model.sections[section];
    const Json command{{"title", fmt::format("make {} ml", usual_ml)},
                       {"command", card_command},
                       {"arguments", {about.file->uri, check::shown_name(model, section), usual_ml}}};
    return {{"range", to_json(about.positions.range(it.place.span))}, {"command", command}};
}

}  // namespace

Json code_lenses(Workspace& workspace, const Json& params) {
    workspace.settle();
    const Asked about = asked(workspace, params);
    View& view = workspace.view_of(about.number);
    const check::Model& model = view.model();
    const text::FileId source = view.source_of(about.number);
    Json all = Json::array();
    for (check::Id id = 0; id < model.sections.size(); ++id) {
        const check::Section& section = model.sections[id];
        const bool mixed = section.kind != check::SectionKind::conversion && section.recipe != check::none;
        if (mixed && section.place.file == source) all.push_back(lens(about, model, id));
    }
    return all;
}

Json execute_command(Workspace& workspace, const Json& params) {
    if (params.at("command") != card_command) throw Refused{-32602, "there is no such command"};
    const Json& arguments = params.at("arguments");
    const Asked about = asked(workspace, {{"textDocument", {{"uri", arguments.at(0)}}}});
    View& view = workspace.view_of(about.number);
    if (diagnostics::any_error(view.loaded().checked.diagnostics))
        throw Refused{-32803, "nothing is worked out for the bench until the errors are put right"};
    const check::Model& model = view.model();
    const auto found = model.section_names.find(syntax::normal_name(arguments.at(1).get<std::string>()));
    if (found == model.section_names.end() || !driver::are_read(view.loaded())[found->second])
        throw Refused{-32803, "no such solution can be made"};
    plan::CardRequest request;
    request.section = found->second;
    const int ml = arguments.at(2).get<int>();
    if (ml < 1) throw Refused{-32602, "a volume is more than nothing"};
    request.how_much = plan::MakeVolume{ml};
    auto made = plan::make_card(model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) throw Refused{-32803, refusal->message};
    auto& card = std::get<plan::Card>(made);
    card.warnings = driver::warnings_for(view.loaded(), found->second);
    return emit::card_text(card, {});
}

}  // namespace scruple::server
