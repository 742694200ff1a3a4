// SPDX-License-Identifier: MIT
// A chemical as JSON: docs/schemas/chemical.json says what is in it.
#include "chemical_words.hpp"
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using check::Chemical;
using json::Value;

constexpr int molar_places = 3;
constexpr int places = 4;

Value interval(const std::optional<check::Interval>& at) {
    if (!at) return nullptr;
    Value all;
    all["low"] = json::number(at->low, places);
    all["high"] = json::number(at->high, places);
    return all;
}

Value strength(const std::optional<check::Strength>& strength) {
    if (!strength) return nullptr;
    Value all;
    all["value"] = json::number(strength->value, places);
    all["unit"] = quantity::info(strength->unit).shown;
    return all;
}

Value form(const check::Form& form) {
    Value all;
    all["name"] = form.name;
    all["formula"] = form.formula_text;
    all["g_per_mol"] = json::number(form.molar_mass, molar_places);
    all["also"] = words::owned(form.also);
    all["sold_as"] = strength(form.sold_as);
    return all;
}

Value density(const Chemical& chemical, const check::Density& density) {
    Value all;
    all["g_per_ml"] = json::number(density.g_per_ml, places);
    all["form"] = json::text_or_null(words::form_name(chemical, density.form));
    all["strength"] = strength(density.strength);
    all["celsius"] = interval(density.at);
    all["source"] = json::text_or_null(density.source);
    return all;
}

Value solubility(const Chemical& chemical, const check::Solubility& row) {
    Value all;
    all["g"] = json::number(row.grams, places);
    all["form"] = json::text_or_null(words::form_name(chemical, row.form));
    all["in_g"] = json::number(row.in_grams, places);
    all["solvent"] = row.solvent.empty() ? "water" : row.solvent;
    all["celsius"] = interval(row.at);
    all["source"] = json::text_or_null(row.source);
    return all;
}

Value equilibrium(const check::Equilibrium& it) {
    const auto or_null = [](const std::optional<double>& value) { return value ? Value(*value) : Value(nullptr); };
    Value all;
    all["reaction"] = written(it);
    all["pk"] = it.constant.pk;
    all["kj_per_mol"] = or_null(it.constant.enthalpy);
    all["j_per_mol_k"] = or_null(it.constant.heat_capacity);
    all["give_or_take"] = it.constant.give_or_take;
    all["source"] = json::text_or_null(it.source);
    return all;
}

Value other_name(const Chemical& chemical, const std::pair<std::string_view, check::Id>& also) {
    Value all;
    all["name"] = also.first;
    all["form"] = json::text_or_null(words::form_name(chemical, also.second));
    return all;
}

}  // namespace

std::string chemical_json(const check::Chemical& chemical) {
    Value all;
    all["kind"] = "chemical";
    all["name"] = chemical.name;
    all["also"] = json::each(chemical.also, [&](const auto& also) { return other_name(chemical, also); });
    all["forms"] = json::each(chemical.forms, form);
    all["grades"] = words::owned(chemical.grades);
    all["ions"] = json::text_or_null(words::ions(chemical));
    all["equilibria"] = json::each(chemical.equilibria, equilibrium);
    all["in_water"] = words::equilibria(chemical);
    all["acts_as"] = words::owned(chemical.acts_as);
    all["densities"] = json::each(chemical.densities, [&](const auto& row) { return density(chemical, row); });
    all["dissolves"] = json::each(chemical.solubilities, [&](const auto& row) { return solubility(chemical, row); });
    all["hazards"] = words::owned(chemical.hazards);
    all["hazards_said"] = chemical.hazards.empty() ? Value(words::no_caution) : Value(nullptr);
    all["hazard_source"] = json::text_or_null(chemical.hazard_source);
    all["cautions"] = words::owned(chemical.cautions);
    all["reminder"] = words::check_the_sheet;
    all["cas"] = json::text_or_null(chemical.cas);
    all["notes"] = words::owned(chemical.notes);
    all["sources"] = words::owned(chemical.sources);
    return json::document(all);
}

}  // namespace scruple::emit
