// SPDX-License-Identifier: MIT
#include "mix.hpp"

#include <algorithm>

#include "scruple/check/solubility.hpp"

namespace scruple::check {
namespace {

// Of the solvents' weight; with more of another in it, solubilities in the one say nothing.
constexpr double nearly_all = 0.9;
// A bottle that is mostly something else than water holds a liquid, and not a solution of one.
constexpr double mostly = 0.5;

}  // namespace

const Mix::Solute* Mix::find(Id chemical) const {
    const auto found = std::ranges::find(solutes, chemical, &Solute::chemical);
    return found == solutes.end() ? nullptr : &*found;
}

Mix::Solvent Mix::solvent() const {
    double all = 0;
    for (const auto& one : solvents) all += one.g;
    for (const auto& one : solvents)
        if (one.g > 0 && one.g >= nearly_all * all) return one;
    return {none, 0};
}

void Mix::add(const Model& model, const Addition& addition, const Exact& measure) {
    const auto& chemical = model.chemicals[addition.chemical];
    const auto dose = dose_of(model, addition, measure);
    const double grams = dose.grams.to_double();
    if (addition.strength || addition.saturated_at) {
        const Id solvent = solvent_called(model, addition.solvent);
        const auto& form = form_of(chemical, addition.form);
        const auto density = density_of(chemical, addition.form, std::nullopt);
        const double room = density ? grams / density->to_double() : (dose.grams * form.room_per_gram).to_double();
        const bool by_weight = addition.strength && addition.strength->unit == quantity::Unit::percent_w_w;
        const double rest = by_weight ? grams * (100 / addition.strength->value.to_double() - 1)
                                      : std::max(0.0, dose.ml.to_double() - room);
        thin(solvent, rest);
        add_volume(dose.ml.to_double(), warmth_of(addition));
    } else if (!dose.room_estimated) {
        add_volume(dose.ml.to_double(), warmth_of(addition));
    } else {
        ml += dose.room_ml.to_double();
    }
    add_substance(model, addition.chemical, addition.form, grams, dose.mol);
}

void Mix::add(const Model& model, std::span<const Content> contents, double more_ml, Warmth warmth) {
    double room = 0;
    for (const auto& content : contents) {
        const auto& chemical = model.chemicals[content.chemical];
        const auto& form = form_of(chemical, content.form);
        const double grams = content.g_per_l * more_ml / 1000, mol = content.mol_per_l * more_ml / 1000;
        const auto density = density_of(chemical, content.form, std::nullopt);
        room += density ? grams / density->to_double() : form.room_per_gram.to_double() * grams;
        add_substance(model, content.chemical, content.form, grams, mol);
        purposes |= chemical.purposes;
    }
    thin(model.water, std::max(0.0, more_ml - room));
    add_volume(more_ml, warmth);
}

void Mix::fill_up(const Model& model, const Addition& addition, double to_ml) {
    const double more_ml = std::max(0.0, to_ml - ml);
    if (addition.chemical != none) {
        const auto density = density_of(model.chemicals[addition.chemical], addition.form, std::nullopt);
        const bool water = addition.chemical == model.water || !density;
        thin(addition.chemical, water ? more_ml : more_ml * density->to_double());
    }
    add_volume(more_ml, warmth_of(addition));
    ml = to_ml;
}

void Mix::add(const Mix& other, double share) {
    for (const auto& one : other.solutes) dissolve({one.chemical, one.form, one.mol * share});
    for (const auto& one : other.solvents) thin(one.chemical, one.g * share);
    add_volume(other.ml * share, other.celsius);
    purposes |= other.purposes;
    vague = vague || other.vague;
}

/// `grams` as they are sold: what the bottle holds beside the substance is water.
void Mix::add_substance(const Model& model, Id chemical, Id form, double grams, double mol) {
    const auto& of = model.chemicals[chemical];
    const auto& as = form_of(of, form);
    const double pure = purity(as).to_double();
    if (chemical == model.water || (density_of(of, form, std::nullopt) && pure >= mostly)) {
        thin(chemical, grams * pure);
    } else {
        dissolve({chemical, form, mol});
    }
    if (pure < 1) thin(model.water, grams * (1 - pure));
    if (!as.formula.water.is_zero()) thin(model.water, mol * as.formula.water.to_double() * water_g_per_mol);
}

void Mix::dissolve(Solute more) {
    const auto found = std::ranges::find(solutes, more.chemical, &Solute::chemical);
    if (found == solutes.end()) {
        solutes.push_back(more);
    } else {
        found->mol += more.mol;
    }
}

void Mix::thin(Id chemical, double g) {
    const auto found = std::ranges::find(solvents, chemical, &Solvent::chemical);
    if (found == solvents.end()) {
        solvents.push_back({chemical, g});
    } else {
        found->g += g;
    }
}

/// Liquids even out their warmth by volume.
void Mix::add_volume(double more_ml, Warmth warmth) {
    if (more_ml <= 0) return;
    const auto even = [&](double here, double there) { return (here * ml + there * more_ml) / (ml + more_ml); };
    celsius = {even(celsius.low, warmth.low), even(celsius.high, warmth.high)};
    ml += more_ml;
}

const Form& form_of(const Chemical& chemical, Id form) {
    static const Form unknown;
    if (chemical.forms.empty()) return unknown;
    return chemical.forms[form == none ? 0 : form];
}

Warmth warmth_of(const Addition& addition) {
    if (!addition.at) return {};
    return {addition.at->low.to_double(), addition.at->high.to_double()};
}

}  // namespace scruple::check
