// SPDX-License-Identifier: MIT
#include "load.hpp"

#include <algorithm>

#include "scruple/check/solubility.hpp"

namespace scruple::check {
namespace {

// Volumes are estimates, and solubilities are printed with two or three digits.
constexpr double over_by = 1.05;

double own_water_g(const Form& form, double mol) {
    return mol * form.formula.water.to_double() * water_g_per_mol;
}

bool reacts(const Mix& mix, const Chemical& chemical) {
    const auto purposes = chemical.purposes;
    return (has(mix.purposes, alkali) && dissolves_in_alkali(chemical)) ||
           (has(mix.purposes, acid) && has(purposes, alkali)) || (has(mix.purposes, caustic) && has(purposes, buffer));
}

/// Seen without working out how much dissolves, as it is of most: less than that dissolves at any temperature.
bool surely_dissolves(const Model& model, const Mix::Solute& solute, const Mix::Solvent& solvent) {
    const double least = solvent.chemical == model.water ? model.chemicals[solute.chemical].least_mol_per_kg : 0;
    return 1000 * solute.mol <= least * solvent.g;
}

}  // namespace

double Load::grams() const {
    return mol * form->molar_mass.to_double();
}

std::optional<double> Load::dissolved_grams() const {
    return grams_dissolved(*form, mol_per_kg, other_g);
}

double Load::wanted_mol_per_kg() const {
    return 1000 * mol / (other_g + own_water_g(*form, mol));
}

bool dissolves_in_alkali(const Chemical& chemical) {
    const bool sour = std::ranges::find(chemical.acts_as, "acid") != chemical.acts_as.end();
    return sour || chemical.ions.empty();
}

std::optional<Load> too_much_of(const Model& model, const Mix& mix, Id chemical, double celsius) {
    const auto solvent = mix.solvent();
    const auto* solute = mix.find(chemical);
    if (mix.vague || !(solvent.g > 0) || solute == nullptr || surely_dissolves(model, *solute, solvent))
        return std::nullopt;
    if (reacts(mix, model.chemicals[chemical])) return std::nullopt;
    const auto saturated = saturated_mol_per_kg(model, chemical, solvent.chemical, celsius);
    if (!saturated) return std::nullopt;
    const auto& form = form_of(model.chemicals[chemical], solute->form);
    const double own = solvent.chemical == model.water ? own_water_g(form, solute->mol) : 0;
    const Load load{.chemical = chemical,
                    .form_id = solute->form == none ? 0 : solute->form,
                    .form = &form,
                    .mol = solute->mol,
                    .solvent = solvent.chemical,
                    .other_g = std::max(0.0, solvent.g - own),
                    .mol_per_kg = *saturated};
    const auto most = load.dissolved_grams();
    return most && load.grams() > *most * over_by ? std::optional(load) : std::nullopt;
}

}  // namespace scruple::check
