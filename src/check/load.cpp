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

}  // namespace

double Load::grams() const {
    return mol * form->molar_mass.to_double();
}

std::optional<double> Load::dissolved_grams() const {
    return grams_dissolved(*form, mol_per_kg, other_g);
}

bool Load::too_much() const {
    const auto most = dissolved_grams();
    return most && grams() > *most * over_by;
}

double Load::wanted_mol_per_kg() const {
    return 1000 * mol / (other_g + own_water_g(*form, mol));
}

bool dissolves_in_alkali(const Chemical& chemical) {
    const bool sour = std::ranges::find(chemical.acts_as, "acid") != chemical.acts_as.end();
    return sour || chemical.ions.empty();
}

std::optional<Load> load_of(const Model& model, const Mix& mix, Id chemical, double celsius) {
    const auto solvent = mix.solvent();
    const auto* solute = mix.find(chemical);
    if (mix.vague || !(solvent.g > 0) || solute == nullptr) return std::nullopt;
    if (reacts(mix, model.chemicals[chemical])) return std::nullopt;
    const auto saturated = saturated_mol_per_kg(model, chemical, solvent.chemical, celsius);
    if (!saturated) return std::nullopt;
    const auto& form = form_of(model.chemicals[chemical], solute->form);
    const double own = solvent.chemical == model.water ? own_water_g(form, solute->mol) : 0;
    return Load{.chemical = chemical,
                .form_id = solute->form == none ? 0 : solute->form,
                .form = &form,
                .mol = solute->mol,
                .solvent = solvent.chemical,
                .other_g = std::max(0.0, solvent.g - own),
                .mol_per_kg = *saturated};
}

}  // namespace scruple::check
