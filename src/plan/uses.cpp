// SPDX-License-Identifier: MIT
#include "uses.hpp"

#include <fmt/format.h>

#include "capacity.hpp"
#include "ingredients.hpp"
#include "scruple/plan/figure.hpp"
#include "scruple/plan/shopping.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::Model;
using check::Use;
using Rule = check::CapacityRule::What;

namespace {

/// A reused bath is spent by what has gone through it; a one-shot bath is the volume that is poured away.
std::optional<Measured> stated(const Model& model, Id bath, const Use& use) {
    const bool one_shot = says(check::capacity_of(model, bath), Rule::one_shot);
    auto counted = by_count_lines(model, bath, use);
    if (counted && !one_shot) return counted;
    if (says(check::capacity_of(model, bath), Rule::reused)) return counted;
    const auto poured = by_volume_lines(model, bath, use, false);
    return poured ? poured : counted;
}

std::optional<Measured> spent(const Model& model, Id bath, const Use& use) {
    auto said = stated(model, bath, use);
    auto floor = by_volume_lines(model, bath, use, true);
    if (!floor) return said;
    if (!said || floor->ml > said->ml) return floor;
    return Measured{said->ml, fmt::format("{} (the floor asks for {})", said->how, plain_ml(floor->ml).with_unit())};
}

std::string what_to_write(const Model& model, Id bath) {
    const bool one_shot = says(check::capacity_of(model, bath), Rule::one_shot);
    return one_shot ? "`capacity one-shot, 250 ml per film 135`" : "`capacity 12 films 135 per 1 l`";
}

std::string no_capacity(const Model& model, Id bath, const Use& use) {
    const std::string name = check::shown_name(model, bath);
    const bool some = says(check::capacity_of(model, bath), Rule::volume_per) ||
                      says(check::capacity_of(model, bath), Rule::items_per);
    const std::string which =
        some ? fmt::format("how much {} {} take", name, use.text) : fmt::format("the capacity of {}", name);
    return fmt::format(
        "{} is not known: write what it does, such as {}; until then a batch as written is counted for "
        "each day of use",
        which, what_to_write(model, bath));
}

std::vector<Draw> batch_as_written(const Model& model, Id bath, const std::vector<Use>& uses) {
    std::string what;
    for (const auto& use : uses) what += (what.empty() ? "" : ", ") + std::string(use.text);
    return {{model.sections[bath].makes_ml, what, "a batch as written, its capacity is not known"}};
}

std::string because(const std::vector<Draw>& draws) {
    std::string text;
    for (const auto& draw : draws) text += (text.empty() ? "" : "; ") + draw.what + ": " + draw.how;
    return text;
}

void add_drawn(std::vector<Drawn>& all, const Model& model, Id solution, const std::vector<Draw>& draws) {
    const Exact ml = sum_of(draws);
    if (ml.is_zero()) return;
    all.push_back({solution, ml, because(draws)});
    const auto shares = shares_of(model, solution);
    for (const Id made : in_order_of_making(model, {solution}))
        if (const auto share = shares.find(made); made != solution && share != shares.end())
            all.push_back({made, ml * share->second, "in " + check::shown_name(model, solution)});
}

}  // namespace

Exact sum_of(const std::vector<Draw>& draws) {
    Exact sum;
    for (const auto& draw : draws) sum += draw.ml;
    return sum;
}

Id replenisher_of(const Model& model, Id bath) {
    const Id recipe = model.sections[bath].recipe;
    if (recipe == check::none) return bath;
    for (const Id section : model.recipes[recipe].sections)
        if (model.sections[section].kind == check::SectionKind::replenisher) return section;
    return bath;
}

std::vector<Draw> bath_draws(const Model& model, Id bath, const std::vector<Use>& uses,
                             std::vector<std::string>& warnings) {
    if (model.sections[bath].replenish || uses.empty()) return {};
    std::vector<Draw> draws;
    for (const auto& use : uses) {
        const auto measured = spent(model, bath, use);
        if (!measured) {
            say_once(warnings, no_capacity(model, bath, use));
            return batch_as_written(model, bath, uses);
        }
        draws.push_back({measured->ml, std::string(use.text), measured->how});
    }
    return draws;
}

TopUp top_up(const Model& model, Id bath, const std::vector<Use>& uses, std::vector<std::string>& warnings) {
    const auto& replenish = model.sections[bath].replenish;
    if (!replenish) return {};
    TopUp result{replenisher_of(model, bath), {}};
    for (const auto& use : uses) {
        auto volume = volume_for(replenish->ml, replenish->per, use);
        const Exact carried = carried_over(model, bath, {use});
        if (volume && carried > volume->ml)
            volume = Measured{carried, fmt::format("{} go over into the next bath, which is more than {}",
                                                   plain_ml(carried).with_unit(), volume->how)};
        if (volume)
            result.draws.push_back({volume->ml, std::string(use.text), volume->how});
        else
            say_once(warnings, fmt::format("how much {} {} take is not known, and it is not counted",
                                           check::shown_name(model, result.solution), use.text));
    }
    return result;
}

Exact fill_of(const Model& model, Id bath, const std::vector<Use>& uses) {
    if (says(check::capacity_of(model, bath), Rule::one_shot)) return {};
    Exact fill;
    for (const auto& use : uses)
        if (const auto volume = by_volume_lines(model, bath, use, false)) fill += volume->ml;
    return fill;
}

Exact carried_over(const Model& model, Id bath, const std::vector<Use>& uses) {
    Exact carried;
    for (const auto& use : uses)
        if (const auto* rule = nearest_rule(model, bath, use, Rule::carried))
            if (const auto volume = volume_for(rule->ml, rule->per, use)) carried += volume->ml;
    return carried;
}

Lengthening lengthening(const Model& model, Id bath, const std::vector<Use>& uses) {
    Lengthening longer;
    if (model.sections[bath].replenish) return longer;
    for (const auto& use : uses) {
        const auto* rule = nearest_rule(model, bath, use, Rule::longer);
        if (rule == nullptr) continue;
        const auto times = times_of(rule->per, use);
        if (!times) continue;
        longer.percent += rule->percent * *times;
        longer.seconds += rule->seconds * *times;
    }
    return longer;
}

std::string longer_words(const Lengthening& longer) {
    std::string words;
    if (longer.percent > 0) words = plain(longer.percent, "%").with_unit();
    if (longer.seconds > 0) words += (words.empty() ? "" : " and ") + plain(longer.seconds, "s").with_unit();
    return words + " longer";
}

std::vector<Drawn> drawn_for(const Model& model, Id bath, const std::vector<Use>& uses,
                             std::vector<std::string>& warnings) {
    std::vector<Drawn> drawn;
    add_drawn(drawn, model, bath, bath_draws(model, bath, uses, warnings));
    const TopUp more = top_up(model, bath, uses, warnings);
    if (more.solution != check::none) add_drawn(drawn, model, more.solution, more.draws);
    return drawn;
}

}  // namespace scruple::plan
