// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "card_facts.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Id;
using check::Model;

// What every card says needs no source.
constexpr const char* every_card = "";

class Cautions {
  public:
    void add(std::string_view text, const std::string& source) {
        const auto said = [text](const Caution& caution) { return caution.text == text; };
        if (std::ranges::none_of(list, said)) list.push_back({std::string(text), source});
    }

    void add_all(const std::vector<std::string_view>& texts, const std::string& source) {
        for (const std::string_view text : texts) add(text, source);
    }

    std::vector<Caution> list;
};

std::string source_of(const Chemical& chemical) {
    return fmt::format("{}, {}", chemical.name, chemical.built_in ? "the library" : "your own entry");
}

void add_written(const Model& model, const Reach& reach, Cautions& cautions) {
    const Id own = model.sections[reach.section].recipe;
    for (const Id id : reach.telling) {
        const check::Section& section = model.sections[id];
        if (section.recipe == check::none) continue;
        const check::Recipe& recipe = model.recipes[section.recipe];
        const std::string source = section.recipe == own ? "the recipe" : std::string(recipe.name);
        cautions.add_all(recipe.cautions, source);
        cautions.add_all(section.cautions, source);
    }
}

void add_conversions(const Model& model, const Reach& reach, Cautions& cautions) {
    for (const check::Conversion* conversion : reach.conversions) {
        const Chemical& product = model.chemicals[conversion->product];
        const std::string source = "conversion of " + check::shown_name(product, conversion->product_form);
        cautions.add_all(conversion->cautions, source);
        if (conversion->section != check::none) cautions.add_all(model.sections[conversion->section].cautions, source);
    }
}

}  // namespace

std::vector<Caution> cautions_of(const Model& model, const Reach& reach) {
    Cautions cautions;
    cautions.add(
        "Read the safety data sheet of each chemical before opening it; where it differs from this card, the sheet "
        "wins.",
        every_card);
    add_written(model, reach, cautions);
    add_conversions(model, reach, cautions);
    for (const Id id : reach.chemicals) cautions.add_all(model.chemicals[id].cautions, source_of(model.chemicals[id]));
    if (fixes(model, reach))
        cautions.add("Used fixer contains silver: keep it, and ask your waste authority or a licensed carrier.",
                     every_card);
    cautions.add("Local rules decide what may go down a drain; this card does not.", every_card);
    cautions.add("No first-aid advice is given here: follow the data sheet, or call your poison centre.", every_card);
    return std::move(cautions.list);
}

std::vector<HazardRow> hazards_of(const Model& model, const Reach& reach) {
    std::vector<HazardRow> rows;
    for (const Id id : reach.chemicals) {
        const Chemical& chemical = model.chemicals[id];
        rows.push_back({std::string(chemical.name),
                        {chemical.hazards.begin(), chemical.hazards.end()},
                        std::string(chemical.hazard_source),
                        !chemical.cautions.empty()});
    }
    return rows;
}

}  // namespace scruple::plan
