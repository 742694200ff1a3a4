// SPDX-License-Identifier: MIT
#include "chemical_words.hpp"

#include <fmt/format.h>

#include "scruple/emit/words.hpp"

namespace scruple::emit::words {
namespace {

constexpr int molar_places = 3;
constexpr int density_places = 4;
constexpr std::string_view unit_blank = plan::unit_blank;

std::string in_brackets(std::string_view text) {
    return text.empty() ? std::string() : fmt::format(" ({})", text);
}

std::string at_celsius(const std::optional<check::Interval>& at) {
    return at ? " at " + celsius(*at) : std::string();
}

/// `pK 10.339 ± 0.02 at 25 °C, 14.7 kJ/mol, -249 J/(mol K)`
std::string constant(const chemistry::Constant& it) {
    std::string text = fmt::format("pK{}{:g} ± {:g} at 25{}°C", unit_blank, it.pk, it.give_or_take, unit_blank);
    if (it.enthalpy) text += fmt::format(", {:g}{}kJ/mol", *it.enthalpy, unit_blank);
    if (it.heat_capacity) text += fmt::format(", {:g}{}J/(mol K)", *it.heat_capacity, unit_blank);
    return text;
}

}  // namespace

std::string celsius(const check::Interval& at) {
    const std::string low = quantity::decimal_text(at.low, 1);
    const std::string high = quantity::decimal_text(at.high, 1);
    const std::string range = low == high ? low : fmt::format("{} to {}", low, high);
    return fmt::format("{}{}°C", range, unit_blank);
}

std::string strength(const check::Strength& strength) {
    return fmt::format("{}{}{}", quantity::exact_text(strength.value), unit_blank, quantity::info(strength.unit).shown);
}

std::string molar_mass(const check::Form& form) {
    return quantity::decimal_text(form.molar_mass, molar_places);
}

std::string form_name(const check::Chemical& chemical, check::Id form) {
    return form < chemical.forms.size() ? std::string(chemical.forms[form].name) : std::string();
}

std::string about_form(const check::Chemical& chemical, check::Id form) {
    const check::Form& it = chemical.forms[form];
    std::vector<std::string> names = owned(it.also);
    for (const auto& [name, implied] : chemical.also)
        if (implied == form) names.emplace_back(name);
    const std::string also = names.empty() ? "" : "also called " + listed(names);
    const std::string sold = it.sold_as ? "sold as " + strength(*it.sold_as) : "";
    return listed({also, sold}, "; ");
}

std::vector<std::string> other_names(const check::Chemical& chemical) {
    std::vector<std::string> names;
    for (const auto& [name, implied] : chemical.also)
        if (implied == check::none) names.emplace_back(name);
    return names;
}

std::vector<std::string> densities(const check::Chemical& chemical) {
    std::vector<std::string> lines;
    for (const check::Density& density : chemical.densities) {
        const std::string of = density.strength ? strength(*density.strength) : form_name(chemical, density.form);
        lines.push_back(fmt::format("{}{}g/ml{}{}{}", quantity::decimal_text(density.g_per_ml, density_places),
                                    unit_blank, in_brackets(of), at_celsius(density.at), in_brackets(density.source)));
    }
    return lines;
}

std::vector<std::string> solubilities(const check::Chemical& chemical) {
    std::vector<std::string> lines;
    for (const check::Solubility& row : chemical.solubilities)
        lines.push_back(fmt::format("{}{}g{} in {}{}g {}{}{}", quantity::exact_text(row.grams), unit_blank,
                                    in_brackets(form_name(chemical, row.form)), quantity::exact_text(row.in_grams),
                                    unit_blank, row.solvent.empty() ? "water" : row.solvent, at_celsius(row.at),
                                    in_brackets(row.source)));
    return lines;
}

std::string ions(const check::Chemical& chemical) {
    std::vector<std::string> parts;
    for (const check::Ion& ion : chemical.ions)
        parts.push_back(ion.coefficient == 1 ? std::string(ion.text) : fmt::format("{} {}", ion.coefficient, ion.text));
    return listed(parts, " + ");
}

std::vector<std::string> equilibria(const check::Chemical& chemical) {
    std::vector<std::string> lines;
    for (const check::Equilibrium& it : chemical.equilibria)
        lines.push_back(fmt::format("{}, {}{}", written(it), constant(it.constant), in_brackets(it.source)));
    for (const check::Escape& it : chemical.escapes)
        lines.push_back(fmt::format("{} leaves as a gas, {}, {:g}{}atm of it in air{}", it.molecule.text,
                                    constant(it.constant), it.in_air_atm, unit_blank, in_brackets(it.source)));
    for (const check::Bystander& it : chemical.bystanders)
        lines.push_back(fmt::format("{} is neither acid nor base{}", it.ion.text, in_brackets(it.source)));
    for (const check::IonPair& it : chemical.pairs)
        lines.push_back(fmt::format("{} with {}, {:g}{}kg/mol{}", it.one.text, it.other.text, it.epsilon, unit_blank,
                                    in_brackets(it.source)));
    return lines;
}

std::vector<std::string> owned(const std::vector<std::string_view>& views) {
    return {views.begin(), views.end()};
}

}  // namespace scruple::emit::words
