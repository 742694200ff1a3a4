// SPDX-License-Identifier: MIT
#include "solutions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "scruple/syntax/normal.hpp"

namespace scruple::driver {
namespace {

using check::Id;

constexpr const char* has_an_error = "a line that it needs cannot be read; `scruple check` says which";

bool is_meant(const Side& side, const check::Recipe& recipe) {
    if (recipe.built_in) return false;
    return side.only.empty() || side.loaded.sources[recipe.place.file].path == side.only;
}

/// From a heading to the next one; how wide the columns are says nothing.
void add_block(const Loaded& loaded, const check::Place& place, std::string& text) {
    const auto& statements = loaded.trees[place.file]->statements;
    for (std::size_t i = place.statement; i < statements.size(); ++i) {
        if (i > place.statement && std::holds_alternative<syntax::Heading>(statements[i].node)) return;
        if (std::holds_alternative<syntax::CommentOnly>(statements[i].node)) continue;
        for (const char c : loaded.sources[place.file].at(statements[i].span))
            if (c != ' ' && c != '\t') text += c;
        text += '\n';
    }
}

/// Facts, or why there are none.
void look_at(const Side& side, plan::CardMaker& maker, bool is_read, Solution& solution) {
    if (!is_read) {
        solution.why = has_an_error;
        return;
    }
    plan::CardRequest request;
    request.section = solution.section;
    request.variant = solution.variant;
    request.how_much = plan::MakeVolume{1000};
    auto made = maker.make(request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) {
        solution.why = refusal->message;
        return;
    }
    auto& card = std::get<plan::Card>(made);
    card.warnings = judgements_for(side.loaded, solution.section);
    std::ranges::move(warnings_for(side.loaded, solution.section), std::back_inserter(card.warnings));
    std::ranges::move(notes_for(side.loaded, solution.section), std::back_inserter(card.notes));
    const check::Section& section = maker.model().sections[solution.section];
    solution.facts = plan::facts_of(card, section.by_parts ? "" : plan::plain_ml(section.makes_ml).with_unit());
}

Solution solution(const Side& side, plan::CardMaker& maker, Id section, std::size_t variant, bool is_read) {
    const check::Model& model = maker.model();
    const check::Recipe& recipe = model.recipes[model.sections[section].recipe];
    std::string name = check::shown_name(model, section);
    if (variant < recipe.variants.size()) name += fmt::format(", variant {}", recipe.variants[variant]);
    Solution made{name, syntax::normal_name(name), section, variant, {}, {}, {}};
    if (model.sections[recipe.sections.front()].kind != check::SectionKind::whole)
        add_block(side.loaded, recipe.place, made.text);
    add_block(side.loaded, model.sections[section].place, made.text);
    look_at(side, maker, is_read, made);
    return made;
}

}  // namespace

std::vector<Solution> solutions_of(Side& side, plan::CardMaker& maker) {
    check::Model& model = side.loaded.checked.model;
    model.log.clear();
    const std::vector<bool> read = are_read(side.loaded);
    std::vector<Solution> all;
    for (Id id = 0; id < model.recipes.size(); ++id) {
        const check::Recipe& recipe = model.recipes[id];
        if (!is_meant(side, recipe)) continue;
        for (const Id section : recipe.sections)
            for (std::size_t variant = 0; variant < check::variants_of(model, model.sections[section]); ++variant)
                all.push_back(solution(side, maker, section, variant, read[section]));
    }
    return all;
}

}  // namespace scruple::driver
