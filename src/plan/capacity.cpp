// SPDX-License-Identifier: MIT
#include "capacity.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "ingredients.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

using check::CapacityRule;
using check::Exact;
using check::Id;
using check::Model;
using check::PerUse;
using check::Use;

namespace {

/// `22 films 135 per 1 l`, `12 ml Lantern part A per 135`
std::string rule_words(const Model& model, const CapacityRule& rule) {
    const std::string of = rule.of == check::none ? "" : " " + check::shown_name(model, rule.of);
    const std::string what =
        rule.what == CapacityRule::What::items_per ? std::string(rule.item) : plain_ml(rule.ml).with_unit() + of;
    return fmt::format("{}{} per {}", rule.at_least ? "at least " : "", what, rule.per.text);
}

std::string ml_words(const Exact& ml) {
    return plain_ml(ml).with_unit();
}

bool is_volume_line(const CapacityRule& rule, bool at_least) {
    return rule.what == CapacityRule::What::volume_per && rule.at_least == at_least && !rule.per.ml;
}

/// How near a volume line comes to the use: the very format, a film for a film, another thing.
int nearness(const PerUse& per, const Use& use) {
    if (same_format(per, use)) return 2;
    return (per.format == check::none) == use.sheets ? 1 : 0;
}

/// Of the lines about one solution, the nearest; of two as near, the first.
std::vector<const CapacityRule*> one_line_a_solution(const Model& model, Id bath, const Use& use, bool at_least) {
    std::vector<const CapacityRule*> chosen;
    for (const auto& rule : check::capacity_of(model, bath)) {
        if (!is_volume_line(rule, at_least)) continue;
        const auto rival = std::ranges::find_if(chosen, [&](const auto* other) { return other->of == rule.of; });
        if (rival == chosen.end())
            chosen.push_back(&rule);
        else if (nearness(rule.per, use) > nearness((*rival)->per, use))
            *rival = &rule;
    }
    return chosen;
}

Measured through_part(const Model& model, const CapacityRule& rule, const Measured& part, const Exact& share) {
    const Exact ml = part.ml / share;
    return {ml, fmt::format("{}, that is {}, in {} of the bath", rule_words(model, rule), part.how, ml_words(ml))};
}

std::optional<Measured> larger(const std::optional<Measured>& a, const std::optional<Measured>& b) {
    if (!a || !b) return a ? a : b;
    return b->ml > a->ml ? b : a;
}

/// `20 films 135`, taken apart; no kind for a plain area.
struct Item {
    enum class Kind : std::uint8_t { area, film, sheet } kind = Kind::area;
    std::string_view format;
};

Item item_of(std::string_view text) {
    const auto film = text.find("film");
    const auto word = film != std::string_view::npos ? film : text.find("sheet");
    if (word == std::string_view::npos) return {};
    const auto blank = std::min(text.find(' ', word), text.size());
    const auto format = std::min(text.find_first_not_of(' ', blank), text.size());
    return {word == film ? Item::Kind::film : Item::Kind::sheet, text.substr(format)};
}

/// A film and a sheet may have the same area and yet be counted apart.
bool counts_the_same(const CapacityRule& rule, const Use& use) {
    if (rule.count.is_zero() || use.count.is_zero()) return false;
    const Item said = item_of(rule.item);
    const Item asked = item_of(use.text);
    if (said.kind == Item::Kind::area || said.kind != asked.kind) return false;
    if (said.format == asked.format) return true;
    return said.kind == Item::Kind::sheet && rule.item_area_cm2 && use.area_cm2 &&
           *rule.item_area_cm2 / rule.count == *use.area_cm2 / use.count;
}

/// How near a count comes to the use: the very thing, a film for a film, another thing.
int nearness(const CapacityRule& rule, const Use& use) {
    if (counts_the_same(rule, use)) return 2;
    return item_of(rule.item).kind == item_of(use.text).kind ? 1 : 0;
}

std::optional<Measured> by_count(const Model& model, const CapacityRule& rule, const Use& use) {
    if (!rule.per.ml) return std::nullopt;
    const bool same = counts_the_same(rule, use);
    if (!same && (!rule.item_area_cm2 || rule.item_area_cm2->is_zero() || !use.area_cm2)) return std::nullopt;
    const Exact share = same ? use.count / rule.count : *use.area_cm2 / *rule.item_area_cm2;
    const Exact ml = share * *rule.per.ml;
    return Measured{ml, fmt::format("{}{}: {}", same ? "" : "by area, ", rule_words(model, rule), ml_words(ml))};
}

}  // namespace

bool says(const std::vector<CapacityRule>& rules, CapacityRule::What what) {
    return std::ranges::any_of(rules, [what](const CapacityRule& rule) { return rule.what == what; });
}

bool same_format(const PerUse& per, const Use& use) {
    if (use.count.is_zero()) return false;
    if (per.format != check::none || use.format != check::none) return per.format == use.format;
    return per.area_cm2 && use.area_cm2 && *per.area_cm2 * use.count == *use.area_cm2;
}

std::optional<Exact> times_of(const PerUse& per, const Use& use) {
    if (same_format(per, use)) return use.count;
    if (!per.area_cm2 || per.area_cm2->is_zero() || !use.area_cm2) return std::nullopt;
    return *use.area_cm2 / *per.area_cm2;
}

std::optional<Measured> volume_for(const Exact& ml, const PerUse& per, const Use& use) {
    const auto times = times_of(per, use);
    if (!times) return std::nullopt;
    if (same_format(per, use))
        return Measured{ml * *times, fmt::format("{} × {}", quantity::exact_text(use.count), ml_words(ml))};
    const Exact by_area = ml * *times;
    return Measured{by_area, fmt::format("by area, from {} per {}, {}", ml_words(ml), per.text, ml_words(by_area))};
}

const CapacityRule* nearest_rule(const Model& model, Id bath, const Use& use, CapacityRule::What what) {
    const CapacityRule* chosen = nullptr;
    for (const auto& rule : check::capacity_of(model, bath)) {
        if (rule.what != what || rule.per.ml) continue;
        if (chosen == nullptr || nearness(rule.per, use) > nearness(chosen->per, use)) chosen = &rule;
    }
    return chosen;
}

std::optional<Measured> by_volume_lines(const Model& model, Id bath, const Use& use, bool at_least) {
    const auto shares = shares_of(model, bath);
    std::optional<Measured> most;
    for (const auto* rule : one_line_a_solution(model, bath, use, at_least)) {
        const Id of = rule->of == check::none ? bath : rule->of;
        const auto share = shares.find(of);
        if (share == shares.end() || share->second <= 0) continue;  // A line about another bath of the recipe.
        const auto volume = volume_for(rule->ml, rule->per, use);
        if (!volume) continue;
        most = larger(most, of == bath ? *volume : through_part(model, *rule, *volume, share->second));
    }
    return most;
}

std::optional<Measured> by_count_lines(const Model& model, Id bath, const Use& use) {
    std::optional<Measured> nearest;
    int best = -1;
    for (const auto& rule : check::capacity_of(model, bath)) {
        if (rule.what != CapacityRule::What::items_per || nearness(rule, use) <= best) continue;
        const auto measured = by_count(model, rule, use);
        if (!measured) continue;
        nearest = measured;
        best = nearness(rule, use);
    }
    return nearest;
}

}  // namespace scruple::plan
