// SPDX-License-Identifier: MIT
#include "scruple/plan/label.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "card_facts.hpp"
#include "scruple/plan/calendar.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Id;
using check::Model;
using check::Section;
using check::SectionKind;

enum class Signal : std::uint8_t { undecided, warning, danger };

struct Statement {
    std::string_view code;
    Signal signal;
    std::string_view words;
};

constexpr Statement statements[] = {
#define SCRUPLE_STATEMENT(code, signal, words) {code, Signal::signal, words},
#include "scruple/plan/hazard_statements.inc"
#undef SCRUPLE_STATEMENT
};

const Statement* statement_of(std::string_view code) {
    const auto found = std::ranges::find(statements, code, &Statement::code);
    return found == std::end(statements) ? nullptr : found;
}

std::string signal_word(Signal signal) {
    switch (signal) {
        case Signal::undecided:
            return {};
        case Signal::warning:
            return "Warning";
        case Signal::danger:
            return "Danger";
    }
    return {};
}

LabelHazard hazard_of(const HazardRow& row) {
    LabelHazard hazard{row.chemical, {}, {}, row.cautioned};
    Signal strongest = Signal::undecided;
    for (const std::string& code : row.codes) {
        const Statement* known = statement_of(code);
        hazard.statements.push_back(known == nullptr ? code : fmt::format("{} {}", code, known->words));
        if (known != nullptr) strongest = std::max(strongest, known->signal);
    }
    hazard.signal = signal_word(strongest);
    return hazard;
}

const Addition* line_taking(const Section& section, Id solution) {
    for (const check::Line& line : section.lines)
        if (const auto* addition = std::get_if<Addition>(&line); addition && addition->solution == solution)
            return addition;
    return nullptr;
}

/// `part A`: on a label the recipe's own name is said already.
std::string short_name(const Model& model, const Section& section, const Addition& addition) {
    const bool own = addition.solution != check::none && model.sections[addition.solution].recipe == section.recipe &&
                     model.sections[addition.solution].kind != SectionKind::whole;
    return own ? check::section_words(model.sections[addition.solution]) : substance_words(model, addition);
}

/// `1+3` where it is diluted with water alone, else `part A 1 + part B 1 + water 2`.
std::string by_parts(const Model& model, const Section& section) {
    std::vector<std::string> numbers, named;
    bool water_alone = section.lines.size() == 2;
    for (const check::Line& line : section.lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || !addition->parts) continue;
        const std::string parts = quantity::exact_text(*addition->parts);
        numbers.push_back(parts);
        named.push_back(short_name(model, section, *addition) + " " + parts);
        water_alone = water_alone && (numbers.size() == 1) == (addition->solution != check::none);
    }
    return water_alone ? joined(numbers, "+") : joined(named, " + ");
}

std::string use_in(const Model& model, const Section& section, const Addition& line) {
    const std::string name = check::section_words(section);
    const std::string in = name.empty() || name == "working" ? "" : name + ": ";
    if (section.by_parts) return in + by_parts(model, section);
    if (line.shares.empty()) return {};
    return fmt::format("{}{} to {}", in, plain_ml(line.shares.front()).with_unit(),
                       plain_ml(section.makes_ml).with_unit());
}

/// In the other solutions of its own recipe.
std::vector<std::string> uses_of(const Model& model, Id section) {
    std::vector<std::string> uses;
    const Id recipe = model.sections[section].recipe;
    if (recipe == check::none) return uses;
    for (const Id other : model.recipes[recipe].sections)
        if (const Addition* line = line_taking(model.sections[other], section))
            if (std::string use = use_in(model, model.sections[other], *line); !use.empty()) uses.push_back(use);
    return uses;
}

std::string strength_of(const Model& model, const Section& section, bool is_taken) {
    switch (section.kind) {
        case SectionKind::working:
        case SectionKind::bath:
            return "WORKING";
        case SectionKind::replenisher:
            return "REPLENISHER";
        case SectionKind::part:
            return "STOCK";
        case SectionKind::conversion:
            return {};
        case SectionKind::whole:
            break;
    }
    if (is_taken || model.recipes[section.recipe].strength == "stock") return "STOCK";
    return "WORKING";
}

bool is_one_shot(const check::CapacityRule& rule) {
    return rule.what == check::CapacityRule::What::one_shot;
}

}  // namespace

Label label_of(const Model& model, const LabelRequest& request) {
    const Section& section = model.sections[request.section];
    const check::Recipe& recipe = model.recipes[section.recipe];
    Label label;
    label.recipe = recipe.name;
    label.section = check::section_words(section);
    if (request.variant < recipe.variants.size()) label.variant = recipe.variants[request.variant];
    label.is_a = recipe.is_a;
    label.uses = uses_of(model, request.section);
    label.strength = strength_of(model, section, !label.uses.empty());
    label.mixed_on = request.mixed_on;
    label.keeps = lives_of(section, request.mixed_on);
    label.use_within = section.use_within_text;
    if (request.ml) label.volume = plain_ml(*request.ml);
    label.batch = request.batch;
    label.tally = std::ranges::none_of(check::capacity_of(model, request.section), is_one_shot) &&
                  !check::capacity_of(model, request.section).empty();
    Reaches reaches(model);
    const Reach& reach = reaches.of(request.section);
    for (const HazardRow& row : hazards_of(model, reach)) label.hazards.push_back(hazard_of(row));
    label.accepted = accepted_of(model, reaches.accepted_in(reach));
    label.digest = request.digest;
    return label;
}

std::string label_code(const Label& label) {
    std::string code = label.recipe;
    for (const std::string& more : {label.section, label.variant})
        if (!more.empty()) code += " " + more;
    const auto add = [&code](std::string_view what, const std::string& value) {
        if (!value.empty()) code += fmt::format("\n{} {}", what, value);
    };
    add("batch", label.batch);
    if (label.volume) add("volume", label.volume->text + " " + label.volume->unit);
    if (label.mixed_on) add("mixed", day_text(*label.mixed_on));
    for (const Life& life : label.keeps)
        if (life.use_by) add("use by", fmt::format("{} ({})", day_text(*life.use_by), life.text));
    add("recipe sha256", label.digest);
    return code;
}

}  // namespace scruple::plan
