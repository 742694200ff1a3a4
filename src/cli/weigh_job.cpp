// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "jobs.hpp"
#include "names.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/weigh.hpp"
#include "terminal.hpp"
#include "typed.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using check::Id;

plan::Weighing weighed(const check::Model& model, const check::Addition& asked, Id form) {
    auto weighing = plan::weigh_as(model, asked.chemical, asked.form, check::dose(model, asked, 0).grams, form);
    if (const auto* refusal = std::get_if<plan::Refusal>(&weighing)) throw Stop{Exit::wrong_call, refusal->message};
    return std::move(std::get<plan::Weighing>(weighing));
}

// As the form that is wanted, or as every other one there is.
std::vector<plan::Weighing> weighings(const driver::Loaded& loaded, const std::optional<std::string>& wanted) {
    const check::Model& model = loaded.checked.model;
    const check::Addition& asked = asked_addition(loaded, "weigh");
    if (asked.chemical == check::none) throw Stop{Exit::wrong_call, "only a chemical is sold in several forms"};
    const check::Chemical& chemical = model.chemicals[asked.chemical];
    if (wanted) return {weighed(model, asked, find_form(chemical, *wanted))};
    std::vector<plan::Weighing> all;
    for (Id form = 0; form < chemical.forms.size(); ++form)
        if (form != asked.form) all.push_back(weighed(model, asked, form));
    if (all.empty()) throw Stop{Exit::wrong_call, fmt::format("no other form of `{}` is known here", chemical.name)};
    return all;
}

}  // namespace

Outcome weigh_job(const Call& call) {
    const As as = call.as();
    if (call.words.empty())
        throw Stop{Exit::wrong_call, "weigh what? `scruple weigh \"30 g sodium carbonate (anhydrous)\"`"};
    Asked asked;
    asked.ingredient("weigh", as_recipe_line(call.name()));
    const driver::Loaded loaded = open_for_the_bench(call, asked);
    const std::vector<plan::Weighing> found = weighings(loaded, call.value("--as-form"));
    switch (as) {
        case As::text:
            return {Exit::fine, emit::weigh_text(found, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::weigh_html(found), {}};
        case As::json:
            return {Exit::fine, emit::weigh_json(found), {}};
    }
    return {};
}

}  // namespace scruple::cli
