// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "jobs.hpp"
#include "names.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/weigh.hpp"
#include "scruple/syntax/normal.hpp"
#include "terminal.hpp"
#include "typed.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using check::Addition;
using check::Id;

plan::Weighing weighed(const check::Model& model, const Addition& called, const Addition& there) {
    auto weighing = plan::weigh_as(model, called, there);
    if (const auto* refusal = std::get_if<plan::Refusal>(&weighing)) throw Stop{Exit::wrong_call, refusal->message};
    return std::move(std::get<plan::Weighing>(weighing));
}

Addition a_gram(Id chemical, Id form) {
    return {.chemical = chemical, .form = form, .shares = {1}};
}

const Addition& called_for(const driver::Loaded& loaded) {
    const Addition& called = asked_addition(loaded, "weigh");
    if (called.chemical == check::none) throw Stop{Exit::wrong_call, "only chemicals are weighed for one another"};
    return called;
}

std::vector<plan::Weighing> as_every_form(const check::Model& model, const Addition& called) {
    std::vector<plan::Weighing> all;
    const check::Chemical& chemical = model.chemicals[called.chemical];
    for (Id form = 0; form < chemical.forms.size(); ++form)
        if (form != called.form || called.strength || called.saturated_at)
            all.push_back(weighed(model, called, a_gram(called.chemical, form)));
    if (all.empty()) throw Stop{Exit::wrong_call, fmt::format("no other form of `{}` is known here", chemical.name)};
    return all;
}

bool names_a_chemical(const check::Model& model, const std::string& typed) {
    const std::string name = typed.substr(0, typed.find(" ("));
    return model.chemical_names.contains(syntax::normal_name(name));
}

bool is_strength(const std::string& typed) {
    return typed.find_first_of("0123456789") == 0 || typed.starts_with("saturated");
}

// As a line of recipe text, with so much of it as its strength is by: a percent by weight is weighed.
std::string line_of(const check::Model& model, const Addition& called, const std::string& typed) {
    const bool by_volume = typed.find("w/v") != std::string::npos || typed.find("v/v") != std::string::npos ||
                           typed.find("/l") != std::string::npos || typed.find("saturated") != std::string::npos;
    const check::Chemical& chemical = model.chemicals[called.chemical];
    const std::string form = is_strength(typed) && called.form < chemical.forms.size()
                                 ? std::string(chemical.forms[called.form].name) + ", "
                                 : "";
    const std::string what =
        names_a_chemical(model, typed) ? typed : fmt::format("\"{}\" ({}{})", chemical.name, form, typed);
    return what + (by_volume ? " 1 ml" : " 1 g");
}

// The workspace is read once for the names, and once with the question that they allow to be put.
std::vector<plan::Weighing> weighings(const Call& call, Asked asked) {
    const driver::Loaded& loaded = open_for_the_bench(call, asked);
    const auto wanted = call.value("--as-form");
    if (!wanted) return as_every_form(loaded.checked.model, called_for(loaded));
    asked.ingredient("--as-form", line_of(loaded.checked.model, called_for(loaded), *wanted));
    const driver::Loaded& both = open_for_the_bench(call, asked);
    const Addition& there = asked_addition(both, "--as-form");
    if (there.chemical == check::none) throw Stop{Exit::wrong_call, "only chemicals are weighed for one another"};
    return {weighed(both.checked.model, called_for(both), there)};
}

}  // namespace

Outcome weigh_job(const Call& call) {
    const As as = call.as();
    if (call.words.empty())
        throw Stop{Exit::wrong_call, "weigh what? `scruple weigh \"30 g sodium carbonate (anhydrous)\"`"};
    Asked asked;
    asked.ingredient("weigh", as_recipe_line(call.name()));
    const std::vector<plan::Weighing> found = weighings(call, std::move(asked));
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
