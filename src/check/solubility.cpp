// SPDX-License-Identifier: MIT
#include "scruple/check/solubility.hpp"

#include <algorithm>
#include <cmath>

#include "scruple/check/contents.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::check {
namespace {

constexpr double water_kg_per_mol = 0.018015;
constexpr double zero_celsius = 273.15;
constexpr double usual_celsius = 20;
const Exact smallest_gram(1, 100'000);  // an interpolated figure needs no more

/// °C; a line without a temperature counts as 20 °C.
double celsius_of(const Solubility& row) {
    return row.at ? row.at->low.to_double() : usual_celsius;
}

const Form& form_of(const Chemical& chemical, const Solubility& row) {
    return chemical.forms[row.form == none ? 0 : row.form];
}

/// kg of water in the crystals that hold a mole.
double crystal_water(const Form& form) {
    return form.formula.water.to_double() * water_kg_per_mol;
}

double mol_per_kg_of(const Chemical& chemical, const Solubility& row) {
    const auto& form = form_of(chemical, row);
    const double mol = row.grams.to_double() / form.molar_mass.to_double();
    return mol / (row.in_grams.to_double() / 1000 + mol * crystal_water(form));
}

/// The lines next to a temperature, both the same at the ends; null where the chemical has none for the solvent.
struct Neighbours {
    const Solubility* below = nullptr;
    const Solubility* above = nullptr;
};

Neighbours neighbours(const Chemical& chemical, Id solvent, double celsius) {
    Neighbours found;
    for (const auto& row : chemical.solubilities) {
        if (row.solvent_chemical != solvent) continue;
        const double at = celsius_of(row);
        if (at <= celsius && (found.below == nullptr || at > celsius_of(*found.below))) found.below = &row;
        if (at >= celsius && (found.above == nullptr || at < celsius_of(*found.above))) found.above = &row;
    }
    if (found.below == nullptr) found.below = found.above;
    if (found.above == nullptr) found.above = found.below;
    return found;
}

double between(const Chemical& chemical, Neighbours near, double celsius) {
    const double low = celsius_of(*near.below) + zero_celsius;
    const double high = celsius_of(*near.above) + zero_celsius;
    const double from = mol_per_kg_of(chemical, *near.below);
    if (!(high > low)) return from;
    const double share = (1 / low - 1 / (celsius + zero_celsius)) / (1 / low - 1 / high);
    return from * std::pow(mol_per_kg_of(chemical, *near.above) / from, share);
}

bool usable(const Chemical& chemical, const Solubility* row) {
    return row != nullptr && !chemical.forms.empty() && form_of(chemical, *row).molar_mass > 0;
}

/// A line for a temperature between two lines, in the form of the lower one.
Solubility row_between(const Chemical& chemical, Neighbours near, double celsius) {
    const double mol_per_kg = between(chemical, near, celsius);
    const auto& form = form_of(chemical, *near.below);
    const auto grams = grams_dissolved(form, mol_per_kg, near.below->in_grams.to_double());
    auto row = *near.below;
    if (grams) row.grams = Exact(std::llround(*grams / smallest_gram.to_double())) * smallest_gram;
    return row;
}

}  // namespace

Id solvent_called(const Model& model, std::string_view name) {
    if (name.empty()) return model.water;
    const auto found = model.chemical_names.find(syntax::normal_name(name));
    return found == model.chemical_names.end() ? none : found->second.first;
}

std::optional<double> saturated_mol_per_kg(const Model& model, Id chemical, Id solvent, double celsius) {
    const auto& of = model.chemicals[chemical];
    if (of.solubilities.empty()) return std::nullopt;
    const auto near = neighbours(of, solvent, celsius);
    if (!usable(of, near.below) || !usable(of, near.above)) return std::nullopt;
    const double low = celsius_of(*near.below), high = celsius_of(*near.above);
    if (celsius < low - reach_celsius || celsius > high + reach_celsius) return std::nullopt;
    return between(of, near, std::clamp(celsius, low, high));
}

double least_saturated_mol_per_kg(const Chemical& chemical, Id solvent) {
    std::optional<double> least;
    for (const auto& row : chemical.solubilities) {
        if (row.solvent_chemical != solvent) continue;
        if (!usable(chemical, &row)) return 0;
        const double here = mol_per_kg_of(chemical, row);
        least = std::min(least.value_or(here), here);
    }
    return least.value_or(0);
}

std::optional<double> celsius_to_dissolve(const Model& model, Id chemical, Id solvent, double mol_per_kg,
                                          double celsius) {
    constexpr double boiling = 100;
    for (double at = std::ceil(celsius); at < boiling; ++at) {
        const auto saturated = saturated_mol_per_kg(model, chemical, solvent, at);
        if (saturated && *saturated >= mol_per_kg) return at;
    }
    return std::nullopt;
}

std::optional<double> grams_dissolved(const Form& form, double mol_per_kg, double water_g) {
    const double left = 1 - mol_per_kg * crystal_water(form);
    if (left <= 0) return std::nullopt;
    return mol_per_kg * water_g / 1000 / left * form.molar_mass.to_double();
}

double water_to_dissolve(const Form& form, double mol_per_kg, double grams) {
    const double mol = grams / form.molar_mass.to_double();
    return std::max(0.0, 1000 * mol * (1 / mol_per_kg - crystal_water(form)));
}

std::optional<Exact> saturated_grams_per_ml(const Model& model, const Addition& addition, const Interval& at) {
    if (addition.form == none) return std::nullopt;
    const auto& chemical = model.chemicals[addition.chemical];
    const double celsius = at.low.to_double();
    const auto near = neighbours(chemical, solvent_called(model, addition.solvent), celsius);
    if (!usable(chemical, near.below)) return std::nullopt;
    const bool on_a_line = near.below == near.above || celsius_of(*near.below) == celsius;
    const auto row = on_a_line ? *near.below : row_between(chemical, near, celsius);
    const auto& stated = form_of(chemical, row);
    const Exact ml = row.in_grams + row.grams * stated.room_per_gram;
    return as_form(stated, chemical.forms[addition.form], row.grams) / ml;
}

}  // namespace scruple::check
