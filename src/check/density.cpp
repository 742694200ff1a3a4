// SPDX-License-Identifier: MIT
// What a ml weighs, and what a dissolved gram takes up.
#include "scruple/check/contents.hpp"

namespace scruple::check {
namespace {

using quantity::Unit;

const Exact water_ml_per_mol(18);
const Exact salt_ml_per_gram(3, 10);
const Exact other_ml_per_gram(3, 4);
const Exact water_grams_per_mol(18015, 1000);
/// An estimate needs no more digits, and sums of it stay small numbers.
const Exact estimate_step(1, 10000);

}  // namespace

std::optional<Exact> density_of(const Chemical& chemical, Id form, const std::optional<Strength>& strength) {
    for (const auto& density : chemical.densities) {
        if (density.strength != strength) continue;
        if (density.form == none || form == none || density.form == form || strength) return density.g_per_ml;
    }
    return std::nullopt;
}

DensityNeed density_need(const Chemical& chemical, const std::optional<Strength>& strength, bool by_volume) {
    if (!strength) return by_volume ? DensityNeed::of_form : DensityNeed::nothing;
    switch (strength->unit) {
        case Unit::percent_w_w:
            return by_volume && !chemical.forms.empty() ? DensityNeed::of_solution : DensityNeed::nothing;
        case Unit::percent_v_v:
            return DensityNeed::of_form;
        default:
            return by_volume ? DensityNeed::nothing : DensityNeed::of_solution;
    }
}

std::string known_densities(const Chemical& chemical) {
    std::string known;
    for (const auto& density : chemical.densities) {
        std::string inside;
        if (density.strength) {
            inside = quantity::exact_text(density.strength->value) + " " +
                     std::string(quantity::info(density.strength->unit).shown);
        } else if (density.form != none) {
            inside = chemical.forms[density.form].name;
        } else {
            continue;
        }
        known += (known.empty() ? "`(" : ", `(") + inside + ")`";
    }
    if (known.empty()) return known;
    return (known.find(',') == std::string::npos ? "; known is that of " : "; known are those of ") + known;
}

Exact room_of_gram(const Chemical& chemical, const Form& form) {
    if (chemical.takes_up) return *chemical.takes_up;
    Exact per_gram = chemical.ions.empty() ? other_ml_per_gram : salt_ml_per_gram;
    if (form.formula.water.is_zero()) return per_gram;
    const Exact water_mol = form.formula.water / form.molar_mass;
    const Exact room = water_mol * water_ml_per_mol + (1 - water_mol * water_grams_per_mol) * per_gram;
    return room.rounded_to(estimate_step);
}

Exact as_form(const Form& from, const Form& to, const Exact& grams) {
    return grams * to.molar_mass / from.molar_mass;
}

}  // namespace scruple::check
