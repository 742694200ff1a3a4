// SPDX-License-Identifier: MIT
#include "encounter.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <cmath>

#include "bath.hpp"
#include "expected.hpp"
#include "scruple/check/making.hpp"
#include "scruple/check/ph.hpp"

namespace scruple::check {
namespace {

// How far ideal solutions and real ones may differ in pH.
constexpr double ideal_is_off = 1;
// Within that of a limit, how sure the pH is matters for what is lethal.
constexpr double near_limit = 1.5;
constexpr double traces = 1e-9;  // mol/l; below it a thing is not there

// ---- sides ----

bool takes_part(const Met& met, const Content& content, const Moment& mix) {
    if (!(met.mol_per_mol[content.chemical] > 0)) return false;
    const bool as_such = mix.put_in == met.chemical && (met.form == none || mix.put_in_form == met.form);
    return met.what != Met::What::form || as_such;
}

const Met* met_by(const std::vector<Met>& any, const Content& content, const Moment& mix) {
    const auto found = std::ranges::find_if(any, [&](const Met& met) { return takes_part(met, content, mix); });
    return found == any.end() ? nullptr : &*found;
}

/// How much of the side a content brings; of an ion its own grams.
Content share_of(const Met& met, const Content& content) {
    Content share = content;
    share.mol_per_l = content.mol_per_l * met.mol_per_mol[content.chemical];
    if (met.what == Met::What::ion) share.g_per_l = share.mol_per_l * met.g_per_mol;
    return share;
}

bool holds(const std::vector<Id>& chemicals, Id chemical) {
    return std::ranges::find(chemicals, chemical) != chemicals.end();
}

/// The chemical that brings most of a side, beside those of other sides; none where too little of it is there.
Id present(const Side& side, const Moment& mix, const std::vector<Id>& of_others) {
    Content sum;
    Content most;
    for (const auto& content : mix.contents) {
        const auto* met = met_by(side.any, content, mix);
        if (met == nullptr || holds(of_others, content.chemical)) continue;
        const auto share = share_of(*met, content);
        sum.mol_per_l += share.mol_per_l;
        sum.g_per_l += share.g_per_l;
        if (share.mol_per_l > most.mol_per_l) most = share;
    }
    if (!(sum.mol_per_l > traces)) return none;
    const bool enough = !side.at_least || *in_unit(sum, side.at_least->unit) >= side.at_least->value.to_double();
    return enough ? most.chemical : none;
}

/// A chemical for each side, no two the same, since none meets itself; empty where a side is not there.
std::vector<Id> present(const Meeting& meeting, const Moment& mix) {
    std::vector<Id> all;
    for (const auto& side : meeting.sides) {
        all.push_back(present(side, mix, all));
        if (all.back() == none) return {};
    }
    return all;
}

// ---- charges ----

/// The mean charge of each component of the table at a pH, in an ideal solution at 25 °C. What joins several units in
/// one is left aside.
std::vector<double> mean_charges(const AcidBase& table, double ph) {
    std::vector<double> charge(table.components), all(table.components);
    for (const auto& known : table.known) {
        const auto& species = known.species;
        if (species.component == chemistry::no_component || species.units != 1) continue;
        double log_k = 0;
        for (const auto& [constant, weight] : known.constants) log_k -= weight * table.constants[constant].value.pk;
        const double share = std::pow(10, log_k - species.protons * ph);
        charge[species.component] += share * species.charge;
        all[species.component] += share;
    }
    for (std::size_t i = 0; i < charge.size(); ++i) charge[i] = all[i] > 0 ? charge[i] / all[i] : 0;
    return charge;
}

std::vector<double> charges_at(const AcidBase& table, double ph) {
    const auto mean = mean_charges(table, ph);
    std::vector<double> all;
    for (const auto& chemical : table.chemicals) {
        double charge = 0;
        for (const auto& [known, coefficient] : chemical.brings) {
            const auto& species = table.known[known].species;
            if (species.component != chemistry::no_component)
                charge += coefficient * species.units * mean[species.component];
        }
        all.push_back(charge);
    }
    return all;
}

bool brings_something(const Side& side, std::size_t chemical) {
    return std::ranges::any_of(side.any, [&](const Met& met) { return met.mol_per_mol[chemical] > 0; });
}

std::string names(const Model& model, const std::vector<Id>& chemicals) {
    std::string text;
    for (std::size_t i = 0; i < chemicals.size(); ++i) {
        if (i > 0) text += i + 1 == chemicals.size() ? " and " : ", ";
        text += "`" + std::string(model.chemicals[chemicals[i]].name) + "`";
    }
    return text;
}

}  // namespace

Encounters::Encounters(const Model& model)
    : model_(model), charges_(model.meetings.size()), takes_(model.chemicals.size()) {
    for (Id id = 0; id < model.meetings.size(); ++id) enter_sides(id);
}

const Encounters::Charges& Encounters::charges_of(const Meeting& meeting, const Limit& limit) const {
    auto& known = charges_[number_of(meeting)];
    std::call_once(known.once, [&] {
        const auto& table = model_.acid_base;
        const double ph = limit.ph + (limit.below ? ideal_is_off : -ideal_is_off);
        known.charges = {charges_at(table, limit.ph), charges_at(table, ph), std::pow(10, -ph) - std::pow(10, ph - 14)};
    });
    return known.charges;
}

void Encounters::enter_sides(Id meeting) {
    const auto& it = model_.meetings[meeting];
    constexpr std::size_t last = 63;
    all_sides_.push_back(0);
    for (std::size_t side = 0; side < it.sides.size() && !it.comes.empty(); ++side) {
        const Sides bit = Sides{1} << std::min(side, last);
        all_sides_.back() |= bit;
        for (std::size_t chemical = 0; chemical < takes_.size(); ++chemical) {
            if (!brings_something(it.sides[side], chemical)) continue;
            auto& takes = takes_[chemical];
            if (takes.empty() || takes.back().meeting != meeting) takes.push_back({meeting, 0});
            takes.back().sides |= bit;
        }
    }
}

std::optional<Encounters::Limit> Encounters::limit_of(const Meeting& meeting) {
    if (meeting.below_ph) return Limit{*meeting.below_ph, true};
    if (meeting.above_ph) return Limit{*meeting.above_ph, false};
    return std::nullopt;
}

std::size_t Encounters::number_of(const Meeting& meeting) const {
    return static_cast<std::size_t>(&meeting - model_.meetings.data());
}

bool Encounters::possible(const Meeting& meeting, std::span<const Content> contents) const {
    const auto number = number_of(meeting);
    Sides there = 0;
    for (const auto& content : contents)
        for (const auto& takes : takes_[content.chemical])
            if (takes.meeting == number) there |= takes.sides;
    return there != 0 && there == all_sides_[number] && may_pass_limit(meeting, contents);
}

std::vector<Id> Encounters::possible(std::span<const Content> contents) const {
    boost::container::small_vector<Sides, 64> there(all_sides_.size());
    for (const auto& content : contents)
        for (const auto& takes : takes_[content.chemical]) there[takes.meeting] |= takes.sides;
    std::vector<Id> all;
    for (Id id = 0; id < there.size(); ++id)
        if (there[id] != 0 && there[id] == all_sides_[id] && may_pass_limit(model_.meetings[id], contents))
            all.push_back(id);
    return all;
}

/// Nothing that pulls the pH past its limit, and nothing that is not known in water: so it stays on its side.
bool Encounters::may_pass_limit(const Meeting& meeting, std::span<const Content> contents) const {
    const auto limit = limit_of(meeting);
    if (!limit) return true;
    const auto& charges = charges_of(meeting, *limit).short_of_it;
    return std::ranges::any_of(contents, [&](const Content& content) {
        const double charge = charges[content.chemical];
        return !model_.acid_base.chemicals[content.chemical].missing.empty() ||
               (limit->below ? charge < 0 : charge > 0);
    });
}

std::optional<std::string> Encounters::find(const Meeting& meeting, const Moment& mix, Certainty certainty) const {
    if (meeting.warmer_than && !(mix.celsius && *mix.celsius > *meeting.warmer_than)) return std::nullopt;
    const auto limit = limit_of(meeting);
    if (!possible(meeting, mix.contents) || (limit && surely_far(meeting, *limit, mix))) return std::nullopt;
    if (present(meeting, mix).empty()) return std::nullopt;
    std::string at;
    if (limit) {
        const auto found = how(meeting, *limit, mix, certainty);
        if (!found) return std::nullopt;
        at = *found;
    }
    if (meeting.warmer_than) at += fmt::format("{} {:.3g} °C", at.empty() ? " at" : " and", *mix.celsius);
    const auto chemicals = who(meeting, mix);
    const auto verb = chemicals.size() > 1 ? " meet" : limit ? " is here" : " goes in";
    return names(model_, chemicals) + verb + at;
}

bool Encounters::surely_far(const Meeting& meeting, const Limit& limit, const Moment& mix) const {
    const auto& [at_limit, charges, of_water] = charges_of(meeting, limit);
    double surplus = of_water;
    for (const auto& content : mix.contents) {
        if (!model_.acid_base.chemicals[content.chemical].missing.empty()) return false;
        surplus += content.mol_per_l * charges[content.chemical];
    }
    return limit.below ? surplus > 0 : surplus < 0;
}

std::optional<std::string> Encounters::how(const Meeting& meeting, const Limit& limit, const Moment& mix,
                                           Certainty certainty) const {
    const auto value = ph_value_of(model_, mix.contents, usual_celsius);
    if (!value) {
        const auto none = ph_of(model_, mix.contents, usual_celsius);
        const auto* no_ph = std::get_if<NoPh>(&none);
        return how_in_doubt(meeting, limit, mix, no_ph != nullptr ? no_ph->why : "");
    }
    const double past = limit.below ? limit.ph - *value : *value - limit.ph;
    if (past > 0) return fmt::format(" at pH {:.1f}", *value);
    const bool ends_count = meeting.danger == Danger::lethal || certainty == Certainty::by_range;
    if (!ends_count || past < -near_limit) return std::nullopt;
    const auto found = ph_of(model_, mix.contents, usual_celsius);
    const auto* ph = std::get_if<Ph>(&found);
    if (ph == nullptr) return std::nullopt;
    const double end = limit.below ? ph->low : ph->high;
    if (limit.below ? end >= limit.ph : end <= limit.ph) return std::nullopt;
    return fmt::format(" at a pH of {:.1f}, which may be {:.1f}", *value, end);
}

std::optional<std::string> Encounters::how_in_doubt(const Meeting& meeting, const Limit& limit, const Moment& mix,
                                                    const std::string& why) const {
    std::vector<Content> known;
    bool unknown_counts = false;
    bool any_counts = meeting.in_doubt.empty();
    for (const auto& content : mix.contents) {
        const bool endangered = met_by(meeting.sides.front().any, content, mix) != nullptr;
        const bool counts = !endangered && met_by(meeting.in_doubt, content, mix) != nullptr;
        any_counts = any_counts || counts;
        if (model_.acid_base.chemicals[content.chemical].missing.empty())
            known.push_back(content);
        else
            unknown_counts = unknown_counts || counts;
    }
    const auto rest = ph_value_of(model_, known, usual_celsius);
    const bool far = rest && (limit.below ? *rest > limit.ph + ideal_is_off : *rest < limit.ph - ideal_is_off);
    if (!unknown_counts && (far || (!rest && !any_counts))) return std::nullopt;
    return ", and the pH is not known, since " + why;
}

double Encounters::litres_of_gas(const Meeting& meeting, const Moment& mix) const {
    const auto bath = Bath::of(model_, mix.contents, usual_celsius);
    const auto* known = std::get_if<Bath>(&bath);
    if (known == nullptr) return 0;
    const auto becomes = [&](Id chemical) {
        return std::ranges::any_of(meeting.sides.front().any,
                                   [&](const Met& met) { return met.mol_per_mol[chemical] > 0; });
    };
    const auto found = known->solve();
    double mol_per_l = 0;
    for (const auto& gas : model_.acid_base.gases)
        if (becomes(gas.chemical)) mol_per_l += known->dissolved(gas, found);
    return mol_per_l * mix.ml / 1000 * litres_a_mole_of_gas().to_double();
}

/// The sides, and what else drives the pH past its limit: whatever pulls most that way.
std::vector<Id> Encounters::who(const Meeting& meeting, const Moment& mix) const {
    auto chemicals = present(meeting, mix);
    const auto limit = limit_of(meeting);
    if (!limit || chemicals.size() > 1) return chemicals;
    const auto& charges = charges_of(meeting, *limit).at_limit;
    Id most = none;
    double pull = 0;
    for (const auto& content : mix.contents) {
        const bool in_doubt = !model_.acid_base.chemicals[content.chemical].missing.empty() &&
                              met_by(meeting.in_doubt, content, mix) != nullptr;
        const double charge = in_doubt ? (limit->below ? -1 : 1) : charges[content.chemical];
        const double mine = content.mol_per_l * (limit->below ? -charge : charge);
        if (content.chemical == chemicals.front() || !(mine > pull)) continue;
        pull = mine;
        most = content.chemical;
    }
    if (most != none) chemicals.push_back(most);
    return chemicals;
}

}  // namespace scruple::check
