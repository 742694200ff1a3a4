// SPDX-License-Identifier: MIT
#include "names.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "call.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::cli {
namespace {

using check::Id;
using driver::Loaded;
using Names = std::vector<std::string>;

constexpr std::size_t most_listed = 12;

std::string nearest(const std::string& name, const Names& shown) {
    Names normal;
    for (const std::string& one : shown) normal.push_back(syntax::normal_name(one));
    const std::string near = diagnostics::nearest(syntax::normal_name(name), {normal.begin(), normal.end()});
    for (std::size_t i = 0; !near.empty() && i < shown.size(); ++i)
        if (normal[i] == near) return shown[i];
    return {};
}

/// Names that hold the one that was typed: `soda ash`, `washing soda` for `soda`.
Names holding(const std::string& name, const Names& shown) {
    Names found;
    for (const std::string& one : shown) {
        const bool holds =
            !name.empty() && syntax::normal_name(one).find(syntax::normal_name(name)) != std::string::npos;
        if (holds && found.size() < most_listed) found.push_back(one);
    }
    return found;
}

/// `few` is what is listed where `shown` is too much to list.
Stop not_there(std::string_view what, const std::string& name, const Names& shown, const Names& few = {}) {
    const std::string near = nearest(name, shown);
    std::string rest = "there is none at all";
    if (!near.empty()) {
        rest = fmt::format("the nearest is `{}`", near);
    } else if (const Names like = holding(name, shown); !like.empty()) {
        rest = "did you mean " + alternatives(like) + "?";
    } else if (shown.size() > most_listed && !few.empty() && few.size() <= most_listed) {
        rest = "there is " + alternatives(few);
    } else if (shown.size() > most_listed) {
        rest = "`scruple help names` lists those there are";
    } else if (!shown.empty()) {
        rest = "there is " + alternatives(shown);
    }
    if (name.empty()) return {Exit::wrong_call, fmt::format("which {}? {}", what, rest)};
    return {Exit::wrong_call, fmt::format("there is no {} called `{}`; {}", what, name, rest)};
}

bool was_asked(const Loaded& loaded, const check::Place& place) {
    return place.file >= loaded.asked;
}

Names section_names(const check::Model& model, const check::Recipe& recipe) {
    Names names;
    for (const Id section : recipe.sections) names.push_back(check::shown_name(model, section));
    return names;
}

Names recipe_names(const Loaded& loaded) {
    Names names;
    for (const check::Recipe& recipe : loaded.checked.model.recipes)
        if (!was_asked(loaded, recipe.place)) names.emplace_back(recipe.name);
    return names;
}

Meant all_of(const check::Model& model, Id id) {
    const check::Recipe& recipe = model.recipes[id];
    if (recipe.sections.empty())
        throw Stop{Exit::wrong_call, fmt::format("there is nothing to mix in `{}`", recipe.name)};
    return {id, recipe.sections};
}

// The recipe whose name the words begin with, where the rest is no section of it.
const check::Recipe* recipe_at_front(const check::Model& model, std::string name) {
    while (true) {
        const std::size_t blank = name.rfind(' ');
        if (blank == std::string::npos) return nullptr;
        name.resize(blank);
        if (const auto found = model.recipe_names.find(name); found != model.recipe_names.end())
            return &model.recipes[found->second];
    }
}

template <class Things>
Names names_in(const Things& things) {
    Names names;
    for (const auto& thing : things) names.emplace_back(thing.name);
    return names;
}

template <class Map>
Id id_in(const Map& map, std::string_view what, const std::string& name, const Names& shown) {
    const auto found = map.find(syntax::normal_name(name));
    if (found == map.end()) throw not_there(what, name, shown);
    return found->second;
}

/// The only chemical with a form of this formula, as it is written there; none where there are several.
Id chemical_of_formula(const check::Model& model, const std::string& formula) {
    Id only = check::none;
    for (Id id = 0; id < model.chemicals.size(); ++id) {
        const auto fits = [&](const check::Form& form) { return form.formula_text == formula; };
        if (std::ranges::none_of(model.chemicals[id].forms, fits)) continue;
        if (only != check::none) return check::none;
        only = id;
    }
    return only;
}

}  // namespace

Meant find_solution(const Loaded& loaded, const std::string& name) {
    const check::Model& model = loaded.checked.model;
    const std::string key = syntax::normal_name(name);
    if (const auto recipe = model.recipe_names.find(key); recipe != model.recipe_names.end())
        return all_of(model, recipe->second);
    if (const auto section = model.section_names.find(key); section != model.section_names.end())
        return {model.sections[section->second].recipe, {section->second}};
    if (const check::Recipe* recipe = recipe_at_front(model, key))
        throw not_there("solution", name, section_names(model, *recipe));
    throw not_there("recipe", name, solution_names(loaded), recipe_names(loaded));
}

Id find_plan(const Loaded& loaded, const std::string& name) {
    return id_in(loaded.checked.model.plan_names, "plan", name, plan_names(loaded));
}

Id asked_plan(const Call& call, const Loaded& loaded) {
    if (call.words.empty() && loaded.checked.model.plans.size() == 1) return 0;
    return find_plan(loaded, call.name());
}

Id find_printed(const Loaded& loaded, const std::string& name) {
    return id_in(loaded.checked.model.printed_names, "printed page", name, printed_names(loaded));
}

Id find_bench(const Loaded& loaded, const std::string& name) {
    return id_in(loaded.checked.model.bench_names, "bench", name, bench_names(loaded));
}

std::pair<Id, Id> find_chemical_in_form(const Loaded& loaded, const std::string& name) {
    const auto& names = loaded.checked.model.chemical_names;
    if (const auto found = names.find(syntax::normal_name(name)); found != names.end()) return found->second;
    const Id of_formula = chemical_of_formula(loaded.checked.model, name);
    if (of_formula == check::none) throw not_there("chemical", name, chemical_names(loaded));
    return {of_formula, check::none};
}

Id find_chemical(const Loaded& loaded, const std::string& name) {
    return find_chemical_in_form(loaded, name).first;
}

std::size_t find_variant(const check::Recipe& recipe, const std::string& name) {
    for (std::size_t i = 0; i < recipe.variants.size(); ++i)
        if (syntax::normal_name(recipe.variants[i]) == syntax::normal_name(name)) return i;
    throw not_there("variant", name, {recipe.variants.begin(), recipe.variants.end()});
}

Id find_form(const check::Chemical& chemical, const std::string& name) {
    const std::string key = syntax::normal_name(name);
    for (std::size_t i = 0; i < chemical.forms.size(); ++i) {
        const check::Form& form = chemical.forms[i];
        bool meant = syntax::normal_name(form.name) == key;
        for (const std::string_view also : form.also) meant = meant || syntax::normal_name(also) == key;
        if (meant) return static_cast<Id>(i);
    }
    throw not_there("form of " + std::string(chemical.name), name, names_in(chemical.forms));
}

Names solution_names(const Loaded& loaded) {
    const check::Model& model = loaded.checked.model;
    Names names;
    for (const check::Recipe& recipe : model.recipes) {
        if (was_asked(loaded, recipe.place)) continue;
        names.emplace_back(recipe.name);
        for (std::string& name : section_names(model, recipe))
            if (name != recipe.name) names.push_back(std::move(name));
    }
    return names;
}

Names plan_names(const Loaded& loaded) {
    return names_in(loaded.checked.model.plans);
}
Names printed_names(const Loaded& loaded) {
    return names_in(loaded.checked.model.printed);
}
Names bench_names(const Loaded& loaded) {
    return names_in(loaded.checked.model.benches);
}

Names chemical_names(const Loaded& loaded) {
    Names names;
    for (const check::Chemical& chemical : loaded.checked.model.chemicals) {
        names.emplace_back(chemical.name);
        for (const auto& also : chemical.also) names.emplace_back(also.first);
    }
    return names;
}

std::string alternatives(const Names& names) {
    std::string result;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) result += i + 1 == names.size() ? " or " : ", ";
        result += fmt::format("`{}`", names[i]);
    }
    return result;
}

}  // namespace scruple::cli
