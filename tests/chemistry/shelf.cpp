// SPDX-License-Identifier: MIT
#include "shelf.hpp"

#include "support/csv.hpp"

namespace scruple::test {

using chemistry::no_component;

Shelf::Shelf() {
    for (auto& row : reference_rows("pKa_25C.csv")) {
        chemistry::Constant constant{.pk = std::stod(row["pKa_or_logK_25C_dimensionless"])};
        if (const auto& enthalpy = row["ionisation_enthalpy_kJ_per_mol"]; !enthalpy.empty())
            constant.enthalpy = std::stod(enthalpy);
        constants_[row["acid_or_reaction"] + "/" + row["step"]] = constant;
    }
    for (auto& row : reference_rows("sit_coefficients.csv"))
        epsilons_[{row["anion_or_cation_a"], row["counter_ion_b"]}] = std::stod(row["epsilon_kg_per_mol"]);

    add("H+", "", {.charge = 1, .protons = 1});
    add("OH-", "", {.charge = -1, .protons = -1, .waters = 1}, {{"water (pKw)/0", -1}});
    add("Na+", "Na", {.charge = 1});
    add("Cl-", "Cl", {.charge = -1});
    add("CO3-2", "C", {.charge = -2});
    add("HCO3-", "C", {.charge = -1, .protons = 1}, {{"carbonic/2", 1}});
    add("CO2", "C", {.protons = 2, .waters = -1}, {{"carbonic/2", 1}, {"carbonic (CO2(aq)+H2O)/1", 1}});
    add("SO3-2", "Sfi", {.charge = -2});
    add("HSO3-", "Sfi", {.charge = -1, .protons = 1}, {{"sulfurous (HSO3-)/2", 1}});
    add("SO2", "Sfi", {.protons = 2, .waters = -1}, {{"sulfurous (HSO3-)/2", 1}, {"sulfurous (SO2(aq)+H2O)/1", 1}});
    add("S2O5-2", "Sfi", {.charge = -2, .units = 2, .protons = 2, .waters = -1},
        {{"sulfurous (HSO3-)/2", 2}, {"pyrosulfite: 2 HSO3- = S2O5-2 + H2O (log K)/0", 1}});
    add("B(OH)3", "B", {});
    add("B(OH)4-", "B", {.charge = -1, .protons = -1, .waters = 1}, {{"boric B(OH)3/1", -1}});
    add("B3O3(OH)4-", "B", {.charge = -1, .units = 3, .protons = -1, .waters = -2},
        {{"3 B(OH)3 = B3O3(OH)4- + H+ + 2 H2O (p)/0", -1}});
    add("B4O5(OH)4-2", "B", {.charge = -2, .units = 4, .protons = -2, .waters = -3},
        {{"4 B(OH)3 = B4O5(OH)4-2 + 2 H+ + 3 H2O (p)/0", -1}});
    add("PO4-3", "P", {.charge = -3});
    add("HPO4-2", "P", {.charge = -2, .protons = 1}, {{"phosphoric/3", 1}});
    add("H2PO4-", "P", {.charge = -1, .protons = 2}, {{"phosphoric/3", 1}, {"phosphoric/2", 1}});
    add("H3PO4", "P", {.protons = 3}, {{"phosphoric/3", 1}, {"phosphoric/2", 1}, {"phosphoric/1", 1}});
    add("acetate-", "Acet", {.charge = -1});
    add("acetic acid", "Acet", {.protons = 1}, {{"acetic/1", 1}});
    add("citrate-3", "Citr", {.charge = -3});
    add("hydrogen citrate-2", "Citr", {.charge = -2, .protons = 1}, {{"citric/3", 1}});
    add("dihydrogen citrate-", "Citr", {.charge = -1, .protons = 2}, {{"citric/3", 1}, {"citric/2", 1}});
    add("citric acid", "Citr", {.protons = 3}, {{"citric/3", 1}, {"citric/2", 1}, {"citric/1", 1}});
    add("ascorbate-2", "Asc", {.charge = -2});
    add("hydrogen ascorbate-", "Asc", {.charge = -1, .protons = 1}, {{"ascorbic/2", 1}});
    add("ascorbic acid", "Asc", {.protons = 2}, {{"ascorbic/2", 1}, {"ascorbic/1", 1}});
}

void Shelf::add(std::string name, std::string component, chemistry::Species species,
                std::vector<std::pair<std::string, double>> constants) {
    members_.push_back({std::move(name), std::move(component), species, std::move(constants)});
}

double Shelf::log_k_at(std::string_view key, double celsius) const {
    chemistry::Constant constant = constants_.find(key)->second;
    constant.pk = -constant.pk;
    return -chemistry::pk_at(constant, celsius);
}

chemistry::Mixture Shelf::mixture(const std::map<std::string, double>& totals, double celsius) const {
    chemistry::Mixture made{.celsius = celsius};
    std::map<std::string, chemistry::Index> components;
    for (const auto& [name, total] : totals) {
        components[name] = static_cast<chemistry::Index>(made.totals.size());
        made.totals.push_back(total);
    }
    std::map<std::string, chemistry::Index> places;
    for (const auto& member : members_) {
        if (!member.component.empty() && !components.contains(member.component)) continue;
        auto species = member.species;
        species.component = member.component.empty() ? no_component : components[member.component];
        for (const auto& [key, sign] : member.constants)
            species.log_k += sign * chemistry::pk_at(constants_.at(key), celsius);
        places[member.name] = static_cast<chemistry::Index>(made.species.size());
        made.species.push_back(species);
    }
    for (const auto& [ions, epsilon] : epsilons_)
        if (places.contains(ions.first) && places.contains(ions.second))
            made.interactions.push_back({places[ions.first], places[ions.second], epsilon});
    return made;
}

chemistry::Index Shelf::index_of(const std::map<std::string, double>& totals, std::string_view species) const {
    chemistry::Index at = 0;
    for (const auto& member : members_) {
        if (member.name == species) return at;
        if (member.component.empty() || totals.contains(member.component)) ++at;
    }
    return at;
}

}  // namespace scruple::test
