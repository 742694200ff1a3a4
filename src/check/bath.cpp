// SPDX-License-Identifier: MIT
#include "bath.hpp"

#include <algorithm>
#include <cmath>

#include "scruple/chemistry/nearby.hpp"

namespace scruple::check {
namespace {

constexpr double ml_of_crystal_water = 18;
constexpr double least_kg_of_water = 0.5;  // in a litre; below it is no solution in water any more

/// What a dissolved gram keeps the water out of, in ml a litre: water of crystallisation is water.
double room_of(const Chemical& chemical, const Content& content) {
    const auto& form = chemical.forms[content.form == none ? 0 : content.form];
    if (const auto density = density_of(chemical, content.form, std::nullopt))
        return content.g_per_l / density->to_double();
    const double room = form.room_per_gram.to_double() * content.g_per_l;
    return room - content.mol_per_l * form.formula.water.to_double() * ml_of_crystal_water;
}

/// What water alone gives off, beside H+.
bool is_hydroxide(const AcidBase::Known& known) {
    return known.species.component == chemistry::no_component && known.species.charge < 0;
}

double kg_of_water(const Model& model, std::span<const Content> contents, double celsius) {
    double room = 0;
    for (const auto& content : contents) room += room_of(model.chemicals[content.chemical], content);
    return chemistry::water_density(celsius) * (1 - room / 1000);
}

}  // namespace

std::variant<Bath, std::string> Bath::of(const Model& model, std::span<const Content> contents, double celsius) {
    const auto& table = model.acid_base;
    if (std::ranges::none_of(table.known, is_hydroxide)) return "the chemical `water` does not say how it falls apart";
    for (const auto& content : contents) {
        const auto& missing = table.chemicals[content.chemical].missing;
        if (!missing.empty())
            return "nothing is known of " + missing + " in water (" +
                   std::string(model.chemicals[content.chemical].name) + ")";
    }
    Bath bath(model, celsius);
    bath.totals_.assign(table.components, 0.0);
    bath.kg_of_water_ = kg_of_water(model, contents, celsius);
    if (!(bath.kg_of_water_ > least_kg_of_water)) return "it holds more of other things than of water";
    for (const auto& content : contents) bath.add(content, bath.kg_of_water_);
    bath.gather_species();
    bath.set_constants();
    return bath;
}

void Bath::add(const Content& content, double kg_of_water) {
    for (const auto& [known, coefficient] : table_->chemicals[content.chemical].brings) {
        const auto& species = table_->known[known].species;
        if (species.component == chemistry::no_component) continue;
        totals_[species.component] += content.mol_per_l * coefficient * species.units / kg_of_water;
    }
}

void Bath::gather_species() {
    local_component_.assign(totals_.size(), none);
    for (Id c = 0; c < totals_.size(); ++c) {
        if (!(totals_[c] > 0)) continue;
        local_component_[c] = static_cast<Id>(mixture_.totals.size());
        mixture_.totals.push_back(totals_[c]);
    }
    local_.assign(table_->known.size(), none);
    for (Id id = 0; id < table_->known.size(); ++id) {
        auto species = table_->known[id].species;
        if (species.component != chemistry::no_component) {
            if (local_component_[species.component] == none) continue;
            species.component = local_component_[species.component];
        }
        local_[id] = static_cast<Id>(known_.size());
        known_.push_back(id);
        mixture_.species.push_back(species);
        for (const auto& weighed : table_->known[id].constants)
            if (std::ranges::find(constants_, weighed.constant) == constants_.end())
                constants_.push_back(weighed.constant);
    }
    for (Id id = 0; id < table_->pairs.size(); ++id) {
        const auto& pair = table_->pairs[id];
        if (local_[pair.one] == none || local_[pair.other] == none) continue;
        pairs_.push_back(id);
        mixture_.interactions.push_back({local_[pair.one], local_[pair.other], pair.epsilon});
    }
}

void Bath::set_constants() {
    for (std::size_t i = 0; i < known_.size(); ++i)
        for (const auto& [constant, weight] : table_->known[known_[i]].constants)
            mixture_.species[i].log_k -= weight * chemistry::pk_at(table_->constants[constant].value, mixture_.celsius);
}

using chemistry::Speciation;

Speciation Bath::with_constant(const Speciation& found, Id constant, double off) const {
    auto other = mixture_;
    for (std::size_t i = 0; i < known_.size(); ++i)
        for (const auto& weighed : table_->known[known_[i]].constants)
            if (weighed.constant == constant) other.species[i].log_k -= weighed.weight * off;
    return chemistry::speciate_near(found, other);
}

Speciation Bath::with_pair(const Speciation& found, std::size_t pair, double off) const {
    auto other = mixture_;
    other.interactions[pair].epsilon += off;
    return chemistry::speciate_near(found, other);
}

Speciation Bath::with_content(const Speciation& found, const Content& content, double share) const {
    auto other = mixture_;
    for (const auto& [known, coefficient] : table_->chemicals[content.chemical].brings) {
        const auto& species = table_->known[known].species;
        // Of what is too little for a number there is nothing here.
        if (species.component == chemistry::no_component || local_component_[species.component] == none) continue;
        other.totals[local_component_[species.component]] +=
            share * content.mol_per_l * coefficient * species.units / kg_of_water_;
    }
    return chemistry::speciate_near(found, other);
}

Speciation Bath::with_trace(const Speciation& found, int charge, double mol_per_kg) const {
    auto other = mixture_;
    const auto component = static_cast<chemistry::Index>(mixture_.totals.size());
    other.species.push_back({.charge = charge, .component = component});
    other.totals.push_back(mol_per_kg);
    return chemistry::speciate_near(found, other);
}

Speciation Bath::open_to(const Speciation& found, const AcidBase::Gas& gas) const {
    constexpr double traces = 1e-6;  // atm; of a gas that the air is not said to hold
    auto other = mixture_;
    const double at_one_atm = std::pow(10, -chemistry::pk_at(gas.constant, mixture_.celsius));
    other.held = {local_[gas.known], at_one_atm * std::max(gas.in_air_atm, traces)};
    return chemistry::speciate_near(found, other);
}

double Bath::dissolved(const AcidBase::Gas& gas, const chemistry::Speciation& found) const {
    const Id at = local_[gas.known];
    return at == none ? 0 : found.molality[at];
}

double Bath::pressure(const AcidBase::Gas& gas, const chemistry::Speciation& found) const {
    const Id at = local_[gas.known];
    if (at == none) return 0;
    const double activity = found.molality[at] * std::pow(10, found.log_gamma[at]);
    return activity * std::pow(10, chemistry::pk_at(gas.constant, mixture_.celsius));
}

}  // namespace scruple::check
