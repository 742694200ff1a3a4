// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "card_facts.hpp"
#include "scruple/plan/calendar.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::CapacityRule;
using check::Exact;
using check::Id;
using check::Model;
using Rule = CapacityRule::What;

std::string ml_text(const Exact& ml) {
    return plain_ml(ml).with_unit();
}

std::string per_text(const check::PerUse& per) {
    return per.ml ? ml_text(*per.ml) : std::string(per.text);
}

std::string in_this_batch(const Exact& count) {
    return fmt::format(" ({} in this batch)", quantity::exact_text(count.floor()));
}

bool of_itself(Id section, const CapacityRule& rule) {
    return rule.of == check::none || rule.of == section;
}

std::string rate_words(const Model& model, Id section, const CapacityRule& rule) {
    const std::string of = of_itself(section, rule) ? "" : " of " + check::shown_name(model, rule.of);
    return fmt::format("{}{}{} per {}", rule.at_least ? "at least " : "", ml_text(rule.ml), of, per_text(rule.per));
}

std::string words_of(const Model& model, Id section, const CapacityRule& rule, const Exact& makes_ml) {
    switch (rule.what) {
        case Rule::one_shot:
            return "one-shot: use once, then discard";
        case Rule::reused:
            return "reused: count what goes through it";
        case Rule::source:
            return "from: " + std::string(rule.text);
        case Rule::volume_per: {
            const bool own = !rule.at_least && of_itself(section, rule) && rule.ml > 0;
            return rate_words(model, section, rule) + (own ? in_this_batch(makes_ml / rule.ml) : "");
        }
        case Rule::carried:
            return rate_words(model, section, rule) + " goes over into the next bath";
        case Rule::longer:
            return fmt::format("{} longer per {} that went through before", rule.text, per_text(rule.per));
        case Rule::items_per: {
            const bool counted = rule.per.ml && *rule.per.ml > 0 && rule.count > 0;
            return fmt::format("{} per {}", rule.item, per_text(rule.per)) +
                   (counted ? in_this_batch(rule.count * makes_ml / *rule.per.ml) : "");
        }
    }
    return {};
}

}  // namespace

std::vector<Life> lives_of(const check::Section& section, std::optional<check::Day> mixed_on) {
    std::vector<Life> lives;
    for (const check::Keeping& keeping : section.keeps) {
        Life life{std::string(keeping.text), {}};
        if (!keeping.when.empty()) life.text += ' ' + std::string(keeping.when);
        if (mixed_on) life.use_by = last_day(*mixed_on, keeping.seconds.low, keeping.text);
        lives.push_back(std::move(life));
    }
    return lives;
}

std::vector<std::string> capacity_words(const Model& model, Id section, const Exact& makes_ml) {
    std::vector<std::string> words;
    for (const CapacityRule& rule : check::capacity_of(model, section))
        words.push_back(words_of(model, section, rule, makes_ml));
    return words;
}

}  // namespace scruple::plan
