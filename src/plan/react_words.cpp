// SPDX-License-Identifier: MIT
#include "react_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace scruple::plan {

namespace {

using check::Exact;
using check::Model;

std::string mass_text(const Substance& what) {
    return quantity::decimal_text(chemistry::molar_mass(what.formula), 3) + unit_blank + "g/mol";
}

std::string name_text(const Substance& what) {
    return what.name == what.formula_text ? what.name : fmt::format("{}, {}", what.name, what.formula_text);
}

std::string mol_text(const Exact& mol) {
    return quantity::significant_text(mol, 5) + unit_blank + "mol";
}

std::string taken_line(const Taken& taken) {
    const std::string pure = plain_grams(taken.grams).with_unit();
    const bool as_it_is = taken.unit == "g" && taken.amount == taken.grams;
    const std::string holds = as_it_is ? fmt::format("{}: {}", name_text(taken.what), pure)
                                       : fmt::format("{}: {} of {} is {}", name_text(taken.what),
                                                     figure_of(taken, taken.amount).with_unit(), taken.name, pure);
    return fmt::format("{} ÷ {} = {}", holds, mass_text(taken.what), mol_text(taken.mol));
}

std::string turns_line(const Reacted& reacted, const Exact& turns) {
    std::vector<std::string> names;
    for (const Reacted::Reagent& reagent : reacted.reagents)
        if (reagent.limits)
            names.push_back(fmt::format("{} ÷ {} of {}", mol_text(turns * reagent.number),
                                        quantity::exact_text(reagent.number), reagent.what.name));
    if (names.empty()) return fmt::format("no amounts are given: {} of the reaction as written", mol_text(turns));
    return fmt::format("the least, each by its number, is {}: {} of the reaction as written", fmt::join(names, ", "),
                       mol_text(turns));
}

std::string product_line(const Reacted::Product& product, const Exact& turns) {
    return fmt::format("{}: {} × {} × {} = {}", name_text(product.what), mol_text(turns),
                       quantity::exact_text(product.number), mass_text(product.what), product.made.with_unit());
}

void add(std::vector<Caution>& cautions, std::string_view text, std::string source) {
    const auto said = [text](const Caution& caution) { return caution.text == text; };
    if (std::ranges::none_of(cautions, said)) cautions.push_back({std::string(text), std::move(source)});
}

/// By the codes for what poisons when it is breathed in.
bool poisons_the_air(const check::Chemical& gas) {
    return std::ranges::any_of(gas.hazards, [](std::string_view code) { return code == "H330" || code == "H331"; });
}

std::string given_off(const Model& model, const Substance& gas) {
    if (poisons_the_air(model.chemicals[gas.chemical]))
        return fmt::format(
            "{} is given off, and it poisons the air: only under extraction or outdoors, a little of "
            "it, and not without knowing its safety data sheet.",
            gas.name);
    return fmt::format(
        "{} is given off: a vessel with room to spare, a little at a time, window open, no stopper "
        "until it is quiet.",
        gas.name);
}

void add_of(const Model& model, const Substance& what, Reacted& reacted) {
    HazardRow row{what.name, {}, "", false};
    if (what.chemical != check::none) {
        const check::Chemical& chemical = model.chemicals[what.chemical];
        row.codes.assign(chemical.hazards.begin(), chemical.hazards.end());
        row.source = chemical.hazard_source;
        row.cautioned = !chemical.cautions.empty();
        for (const std::string_view caution : chemical.cautions)
            add(reacted.cautions, caution,
                fmt::format("{}, {}", chemical.name, chemical.built_in ? "the library" : "your own entry"));
    }
    if (what.chemical != model.water) reacted.hazards.push_back(std::move(row));
}

}  // namespace

std::vector<std::string> lines_of(const Reacted& reacted, const std::vector<Taken>& taken, const Exact& turns) {
    std::vector<std::string> lines;
    lines.reserve(taken.size() + reacted.products.size() + 1);
    for (const Taken& one : taken) lines.push_back(taken_line(one));
    lines.push_back(turns_line(reacted, turns));
    for (const Reacted::Product& product : reacted.products) lines.push_back(product_line(product, turns));
    return lines;
}

void add_cautions(const Model& model, Reacted& reacted) {
    for (const Reacted::Reagent& reagent : reacted.reagents) add_of(model, reagent.what, reacted);
    for (const Reacted::Product& product : reacted.products) {
        add_of(model, product.what, reacted);
        if (product.gas) add(reacted.cautions, given_off(model, product.what), "common practice, no source");
    }
    add(reacted.cautions,
        "Read the safety data sheet of each chemical before opening it; where it differs from this, the sheet wins.",
        "every reaction");
}

}  // namespace scruple::plan
