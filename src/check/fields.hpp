// SPDX-License-Identifier: MIT
// What the structs of a checked library are made of, field by field, for whoever goes through all of them. A struct
// that gets a field more does not compile here until it is named.
#pragma once

#include <concepts>
#include <type_traits>

#include "scruple/check/model.hpp"

namespace scruple::check {

template <class T, class Struct>
concept Is = std::same_as<std::remove_const_t<T>, Struct>;

// ---- pieces -------------------------------------------------------------------------------------

void fields(auto& each, Is<text::Span> auto& span) {
    auto& [begin, end] = span;
    each(begin, end);
}
void fields(auto& each, Is<Place> auto& place) {
    auto& [file, span, statement] = place;
    each(file, span, statement);
}
void fields(auto& each, Is<Interval> auto& interval) {
    auto& [low, high] = interval;
    each(low, high);
}
void fields(auto& each, Is<Strength> auto& strength) {
    auto& [value, unit] = strength;
    each(value, unit);
}
void fields(auto& each, Is<chemistry::Formula::Count> auto& count) {
    auto& [element, atoms] = count;
    each(element, atoms);
}
void fields(auto& each, Is<chemistry::Formula> auto& formula) {
    auto& [atoms, water, charge] = formula;
    each(atoms, water, charge);
}
void fields(auto& each, Is<chemistry::Constant> auto& constant) {
    auto& [pk, enthalpy, heat_capacity, give_or_take] = constant;
    each(pk, enthalpy, heat_capacity, give_or_take);
}
void fields(auto& each, Is<chemistry::Species> auto& species) {
    auto& [charge, component, units, protons, waters, log_k] = species;
    each(charge, component, units, protons, waters, log_k);
}

// ---- chemicals ----------------------------------------------------------------------------------

void fields(auto& each, Is<Form> auto& form) {
    auto& [name, also, text, formula, molar_mass, sold_as, place, called, room_per_gram, molar_mass_off, mol_per_gram] =
        form;
    each(name, also, text, formula, molar_mass, sold_as, place, called, room_per_gram, molar_mass_off, mol_per_gram);
}
void fields(auto& each, Is<Density> auto& density) {
    auto& [g_per_ml, form, strength, at, source] = density;
    each(g_per_ml, form, strength, at, source);
}
void fields(auto& each, Is<Solubility> auto& solubility) {
    auto& [grams, form, in_grams, solvent, at, source, solvent_chemical, solvent_place] = solubility;
    each(grams, form, in_grams, solvent, at, source, solvent_chemical, solvent_place);
}
void fields(auto& each, Is<Ion> auto& ion) {
    auto& [coefficient, text, formula] = ion;
    each(coefficient, text, formula);
}
void fields(auto& each, Is<Equilibrium> auto& equilibrium) {
    auto& [left, right, constant, source, place] = equilibrium;
    each(left, right, constant, source, place);
}
void fields(auto& each, Is<Escape> auto& escape) {
    auto& [molecule, constant, in_air_atm, source] = escape;
    each(molecule, constant, in_air_atm, source);
}
void fields(auto& each, Is<IonPair> auto& pair) {
    auto& [one, other, epsilon, give_or_take, source] = pair;
    each(one, other, epsilon, give_or_take, source);
}
void fields(auto& each, Is<Bystander> auto& bystander) {
    auto& [ion, source] = bystander;
    each(ion, source);
}
void fields(auto& each, Is<Keeping> auto& keeping) {
    auto& [seconds, text, when] = keeping;
    each(seconds, text, when);
}
void fields(auto& each, Is<Chemical> auto& chemical) {
    auto& [name, also, forms, grades, keeps, ions, equilibria, escapes, pairs, bystanders, salt_of, acts_as, densities,
           solubilities, least_mol_per_kg, takes_up, hazards, hazard_source, cautions, notes, sources, cas, place,
           built_in, purposes] = chemical;
    each(name, also, forms, grades, keeps, ions, equilibria, escapes, pairs, bystanders, salt_of, acts_as, densities,
         solubilities, least_mol_per_kg, takes_up, hazards, hazard_source, cautions, notes, sources, cas, place,
         built_in, purposes);
}

// ---- acids and bases ----------------------------------------------------------------------------

void fields(auto& each, Is<AcidBase::Constant> auto& constant) {
    auto& [value, text, chemical] = constant;
    each(value, text, chemical);
}
void fields(auto& each, Is<AcidBase::Weighed> auto& weighed) {
    auto& [constant, weight] = weighed;
    each(constant, weight);
}
void fields(auto& each, Is<AcidBase::Known> auto& known) {
    auto& [text, species, constants, key] = known;
    each(text, species, constants, key);
}
void fields(auto& each, Is<AcidBase::Pair> auto& pair) {
    auto& [one, other, epsilon, give_or_take] = pair;
    each(one, other, epsilon, give_or_take);
}
void fields(auto& each, Is<AcidBase::Gas> auto& gas) {
    auto& [chemical, known, constant, in_air_atm] = gas;
    each(chemical, known, constant, in_air_atm);
}
void fields(auto& each, Is<AcidBase::Brings> auto& brings) {
    auto& [known, coefficient] = brings;
    each(known, coefficient);
}
void fields(auto& each, Is<AcidBase::Chemical> auto& chemical) {
    auto& [brings, missing, salt] = chemical;
    each(brings, missing, salt);
}
void fields(auto& each, Is<AcidBase> auto& table) {
    auto& [constants, known, pairs, gases, chemicals, components] = table;
    each(constants, known, pairs, gases, chemicals, components);
}

// ---- meetings -----------------------------------------------------------------------------------

void fields(auto& each, Is<Met> auto& met) {
    auto& [what, text, chemical, form, g_per_mol, mol_per_mol] = met;
    each(what, text, chemical, form, g_per_mol, mol_per_mol);
}
void fields(auto& each, Is<Side> auto& side) {
    auto& [any, at_least] = side;
    each(any, at_least);
}
void fields(auto& each, Is<Meeting> auto& meeting) {
    auto& [name, danger, comes, sides, below_ph, above_ph, warmer_than, in_doubt, cautions, notes, sources, place,
           built_in] = meeting;
    each(name, danger, comes, sides, below_ph, above_ph, warmer_than, in_doubt, cautions, notes, sources, place,
         built_in);
}

// ---- conversions and formats --------------------------------------------------------------------

void fields(auto& each, Is<Detail> auto& detail) {
    auto& [what, words, value] = detail;
    each(what, words, value);
}
void fields(auto& each, Is<Addition> auto& line) {
    auto& [how, by, chemical, solution, form, grade, strength, solvent, saturated_at, shares, now, at, by_conversion,
           worked_out, made_from, made_by, optional, optional_reason, details, parts, written, place] = line;
    each(how, by, chemical, solution, form, grade, strength, solvent, saturated_at, shares, now, at, by_conversion,
         worked_out, made_from, made_by, optional, optional_reason, details, parts, written, place);
}
void fields(auto& each, Is<Action> auto& line) {
    auto& [verb, toward, seconds, celsius, words, details, place] = line;
    each(verb, toward, seconds, celsius, words, details, place);
}
void fields(auto& each, Is<VesselMove> auto& line) {
    auto& [what, vessel, share, ml, details, place] = line;
    each(what, vessel, share, ml, details, place);
}
void fields(auto& each, Is<Conversion::Side> auto& side) {
    auto& [coefficient, chemical, form] = side;
    each(coefficient, chemical, form);
}
void fields(auto& each, Is<Conversion::PerGram> auto& per) {
    auto& [line, per_grams, chemical, form] = per;
    each(line, per_grams, chemical, form);
}
void fields(auto& each, Is<Conversion> auto& conversion) {
    auto& [product, product_form, left, right, excess_of, excess_percent, vessel_times, per, section, sources, cautions,
           notes, place, built_in] = conversion;
    each(product, product_form, left, right, excess_of, excess_percent, vessel_times, per, section, sources, cautions,
         notes, place, built_in);
}
/// A conversion's: what only recipes say of a solution is not among it.
void fields(auto& each, Is<Section> auto& section) {
    auto& [kind, recipe, label, lines, makes_ml, makes_stated, broken, by_parts, takes_solutions, had_open_amount,
           keeps, use_within, use_within_text, capacity, replenish, expects, accepts, cautions, notes, place] = section;
    each(kind, recipe, label, lines, makes_ml, makes_stated, broken, by_parts, takes_solutions, had_open_amount,
         cautions, notes, place);
    each.nothing_in(keeps, use_within, use_within_text, capacity, replenish, expects, accepts);
}
void fields(auto& each, Is<FilmFormat> auto& format) {
    auto& [name, area_cm2, source, place, built_in] = format;
    each(name, area_cm2, source, place, built_in);
}
/// A library's: what only darkrooms have is not among it.
void fields(auto& each, Is<Model> auto& model) {
    auto& [chemicals, recipes, sections, conversions, benches, suppliers, log, processes, plans, formats, meetings,
           printed, accepted, water, dropper, acid_base, chemical_names, recipe_names, section_names, process_names,
           plan_names, supplier_names, format_names, bench_names, meeting_names, printed_names] = model;
    each(chemicals, sections, conversions, formats, meetings, water, dropper, acid_base, chemical_names, section_names,
         format_names, meeting_names);
    each.nothing_in(recipes, benches, suppliers, log, processes, plans, printed, accepted, recipe_names, process_names,
                    plan_names, supplier_names, bench_names, printed_names);
}

}  // namespace scruple::check
