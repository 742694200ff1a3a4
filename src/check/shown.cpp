// SPDX-License-Identifier: MIT
// Names as people see them.
#include <algorithm>

#include "scruple/check/model.hpp"

namespace scruple::check {
namespace {

std::string_view word_for(SectionKind kind) {
    switch (kind) {
        case SectionKind::part:
            return "part";
        case SectionKind::bath:
            return "bath";
        case SectionKind::working:
            return "working";
        case SectionKind::replenisher:
            return "replenisher";
        case SectionKind::whole:
        case SectionKind::conversion:
            return "";
    }
    return "";
}

std::string written(const std::vector<Ion>& side) {
    std::string text;
    for (const auto& ion : side) {
        if (!text.empty()) text += " + ";
        if (ion.coefficient != 1) text += std::to_string(ion.coefficient) + ' ';
        text += ion.text;
    }
    return text;
}

bool is_used(SectionKind kind) {
    return kind == SectionKind::working || kind == SectionKind::bath;
}

}  // namespace

std::string written(const Equilibrium& equilibrium) {
    return written(equilibrium.left) + " -> " + written(equilibrium.right);
}

std::string section_words(const Section& section) {
    std::string words(word_for(section.kind));
    if (words.empty() || section.label.empty()) return words;
    return words + " " + std::string(section.label);
}

std::string shown_name(const Model& model, Id section_id) {
    const auto& section = model.sections[section_id];
    if (section.recipe == none) return {};
    const auto& recipe = model.recipes[section.recipe];
    const auto words = section_words(section);
    return words.empty() ? std::string(recipe.name) : std::string(recipe.name) + " " + words;
}

std::string shown_name(const Chemical& chemical, Id form) {
    std::string name(chemical.name);
    if (form == none || chemical.forms.size() < 2) return name;
    return name + " (" + std::string(chemical.forms[form].name) + ")";
}

std::string shown_strength(const Strength& strength) {
    return quantity::exact_text(strength.value) + " " + std::string(quantity::info(strength.unit).shown);
}

std::string shown_name(const Chemical& chemical, Id form, const std::optional<Strength>& strength) {
    auto name = shown_name(chemical, form);
    if (!strength) return name;
    if (name.ends_with(')') && form != none && chemical.forms.size() > 1) {
        name.pop_back();
        return name + ", " + shown_strength(*strength) + ")";
    }
    return name + " (" + shown_strength(*strength) + ")";
}

std::size_t variants_of(const Model& model, const Section& section) {
    return section.recipe == none ? 1 : std::max<std::size_t>(model.recipes[section.recipe].variants.size(), 1);
}

const std::vector<CapacityRule>& capacity_of(const Model& model, Id section_id) {
    static const std::vector<CapacityRule> no_rules;
    const auto& section = model.sections[section_id];
    if (!section.capacity.empty() || section.recipe == none) return section.capacity;
    const auto& recipe = model.recipes[section.recipe];
    if (is_used(section.kind) || recipe.sections.size() == 1) return recipe.capacity;
    for (const Id other : recipe.sections) {
        if (is_used(model.sections[other].kind)) return no_rules;
    }
    return section.kind == SectionKind::whole ? recipe.capacity : no_rules;
}

}  // namespace scruple::check
