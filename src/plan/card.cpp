// SPDX-License-Identifier: MIT
#include "scruple/plan/card.hpp"

#include <fmt/format.h>

#include "batch_scale.hpp"
#include "card_facts.hpp"
#include "measures.hpp"
#include "rescaling_of.hpp"
#include "script.hpp"
#include "scruple/check/ph.hpp"
#include "settle.hpp"
#include "words.hpp"
#include "work.hpp"

namespace scruple::plan {

struct SharedByCards {
    explicit SharedByCards(const check::Model& of) : model(of), contents(of), reaches(of) {}

    const check::Model& model;
    check::KnownContents contents;
    Reaches reaches;
};

namespace {

using check::Exact;
using check::Model;

std::string makes_for(const Model& model, const HowMuch& how_much) {
    if (const auto* make = std::get_if<MakeForUses>(&how_much)) {
        std::vector<std::string> texts;
        for (const check::Use& use : make->uses) texts.emplace_back(use.text);
        return joined(texts, ", ");
    }
    if (const auto* make = std::get_if<MakeWith>(&how_much))
        return fmt::format("as much as {} {} allows", plain_grams(make->grams).with_unit(),
                           check::shown_name(model.chemicals[make->chemical], make->form));
    return {};
}

std::vector<std::string> checks_of(const check::Section& section) {
    std::vector<std::string> checks;
    for (const check::Expectation& expect : section.expects) {
        if (!expect.ph) continue;
        std::string text = std::string("pH") + unit_blank + quantity::exact_text(expect.range.low);
        if (expect.range.low != expect.range.high) text += " to " + quantity::exact_text(expect.range.high);
        checks.push_back(std::move(text));
    }
    return checks;
}

std::string about_bench(const check::Bench* bench) {
    if (bench == nullptr) return "No bench is given: nothing is rounded to an instrument.";
    return fmt::format("Rounded to the instruments of the bench {}.", bench->name);
}

std::string about_volume(const check::Section& section) {
    if (section.by_parts) return "The recipe is in parts: the volume is the one asked for.";
    return section.makes_stated ? "" : "No final volume is stated: it is the sum of the lines.";
}

void add_texts(std::vector<std::string>& to, const std::vector<std::string_view>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// A recipe's `strength` is that of what it bottles; its working solution is working strength whatever that is.
std::string strength_of(const check::Recipe& recipe, const check::Section& section) {
    return section.kind == check::SectionKind::working ? "working" : std::string(recipe.strength);
}

void fill_from_recipe(const Model& model, const CardRequest& request, Card& card) {
    const check::Section& section = model.sections[request.section];
    if (section.recipe != check::none) {
        const check::Recipe& recipe = model.recipes[section.recipe];
        card.recipe = recipe.name;
        card.is_a = recipe.is_a;
        card.strength = strength_of(recipe, section);
        if (request.variant < recipe.variants.size()) card.variant = recipe.variants[request.variant];
        add_texts(card.sources, recipe.sources);
        add_texts(card.notes, recipe.notes);
        add_texts(card.assumed, recipe.assumed);
    }
    card.section = check::section_words(section);
    add_texts(card.notes, section.notes);
    card.use_within = section.use_within_text;
    card.checks = checks_of(section);
    card.keeps = lives_of(section, request.mixed_on);
    card.mixed_on = request.mixed_on;
}

/// `batch`: how much is made, as a share of what is written.
void fill_facts(SharedByCards& shared, const CardRequest& request, const Exact& batch, Card& card) {
    const Model& model = shared.model;
    const Exact makes_ml = model.sections[request.section].makes_ml * batch;
    const auto contents = shared.contents.of(request.section, request.variant, batch);
    card.contents = content_rows(model, contents);
    card.ph = ph_row(model, contents, celsius_of(request));
    card.capacity = capacity_words(model, request.section, makes_ml);
    const Reach& reach = shared.reaches.of(request.section);
    card.cautions = cautions_of(model, reach);
    card.accepted = accepted_of(model, shared.reaches.accepted_in(reach));
    card.hazards = hazards_of(model, reach);
    card.makes = plain_ml(makes_ml);
    card.makes_for = makes_for(model, request.how_much);
}

void fill_assumed(const check::Section& section, const check::Bench* bench, std::vector<std::string> from_work,
                  Card& card) {
    card.assumed.push_back(about_bench(bench));
    if (std::string text = about_volume(section); !text.empty()) card.assumed.push_back(std::move(text));
    card.assumed.insert(card.assumed.end(), from_work.begin(), from_work.end());
}

std::variant<Card, Refusal> card_of(SharedByCards& shared, const CardRequest& request) {
    const Model& model = shared.model;
    const auto scale = batch_scale(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&scale)) return *refusal;
    const auto script = script_of(model, request.section, request.variant);
    if (const auto* refusal = std::get_if<Refusal>(&script)) return *refusal;

    const check::Section& section = model.sections[request.section];
    const check::Bench* bench = request.bench == check::none ? nullptr : &model.benches[request.bench];
    const Measures measures(bench);
    const Exact makes_ml = section.makes_ml * std::get<Exact>(scale);
    Worked worked = work_of({model, std::get<Script>(script), std::get<Exact>(scale), makes_ml, measures});

    Card card;
    fill_from_recipe(model, request, card);
    fill_facts(shared, request, std::get<Exact>(scale), card);
    fill_assumed(section, bench, std::move(worked.assumed), card);
    card.gather = std::move(worked.gather);
    card.work = std::move(worked.work);
    if (section.makes_ml > 0 && !request.from_shelf)
        card.rescaling = rescaling_of(model, std::get<Script>(script), bench, section.makes_ml, makes_ml);
    return card;
}

}  // namespace

std::variant<Exact, Refusal> scale_of(const Model& model, const CardRequest& request) {
    const auto settled = settle(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&settled)) return *refusal;
    const auto& changed = std::get<Settled>(settled).model;
    return batch_scale(changed ? *changed : model, request);
}

CardMaker::CardMaker(const Model& model) : shared_(std::make_unique<SharedByCards>(model)) {}
CardMaker::~CardMaker() = default;

const Model& CardMaker::model() const {
    return shared_->model;
}

check::KnownContents& CardMaker::contents() {
    return shared_->contents;
}

std::variant<Card, Refusal> CardMaker::make(const CardRequest& request) {
    const auto settled = settle(model(), request, shared_->reaches.of(request.section));
    if (const auto* refusal = std::get_if<Refusal>(&settled)) return *refusal;
    const auto& [changed, choices] = std::get<Settled>(settled);
    if (!changed) return card_of(*shared_, request);
    SharedByCards then(*changed);
    auto made = card_of(then, request);
    if (auto* card = std::get_if<Card>(&made))
        for (const Choice& choice : choices) card->substituted.push_back(substitution_words(*changed, choice));
    return made;
}

std::variant<Card, Refusal> make_card(const Model& model, const CardRequest& request) {
    return CardMaker(model).make(request);
}

}  // namespace scruple::plan
