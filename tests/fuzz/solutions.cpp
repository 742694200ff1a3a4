// SPDX-License-Identifier: MIT
#include "solutions.hpp"

#include <algorithm>

namespace fuzz {

using namespace scruple;

namespace {

constexpr std::size_t most_solutions = 3;
constexpr check::Day some_day = 20790;  // 2026-12-03

const check::Addition* first_chemical(const check::Model& model, const check::Section& section) {
    for (const check::Line& line : section.lines) {
        const auto* addition = std::get_if<check::Addition>(&line);
        if (addition != nullptr && addition->chemical != check::none && addition->chemical != model.water)
            return addition;
    }
    return nullptr;
}

std::vector<check::Id> solutions_of(const check::Model& model) {
    std::vector<check::Id> all;
    for (const check::Recipe& recipe : model.recipes)
        all.insert(all.end(), recipe.sections.begin(), recipe.sections.end());
    all.resize(std::min(all.size(), most_solutions));
    return all;
}

std::vector<plan::CardRequest> ways_to_ask(const check::Model& model, check::Id id) {
    const check::Section& section = model.sections[id];
    const check::Id bench = model.benches.empty() ? check::none : 0;
    const std::size_t variants = model.recipes[section.recipe].variants.size();
    std::vector<plan::CardRequest> all{{id, 0, {}, check::none, {}}};
    all.push_back({id, variants == 0 ? 0 : variants - 1, plan::MakeVolume{section.makes_ml / 2}, bench, some_day});
    all.back().from_shelf = true;
    if (!model.formats.empty())
        all.push_back({id, 0, plan::MakeForUses{{{.count = 6, .format = 0, .text = "6 films"}}}, bench, {}});
    if (const check::Addition* first = first_chemical(model, section)) {
        all.push_back({id, 0, plan::MakeWith{first->chemical, first->form, 1}, bench, {}});
        all.push_back({id, 0, {}, bench, {}, {{first->chemical, first->form}}});
        all.back().at_celsius = 24;
    }
    return all;
}

}  // namespace

std::vector<plan::CardRequest> requests(const check::Model& model, std::size_t turn) {
    std::vector<plan::CardRequest> all;
    for (const check::Id section : solutions_of(model)) {
        const auto ways = ways_to_ask(model, section);
        all.push_back(ways[turn++ % ways.size()]);
    }
    return all;
}

}  // namespace fuzz
