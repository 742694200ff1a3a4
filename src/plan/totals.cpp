// SPDX-License-Identifier: MIT
#include "totals.hpp"

#include <algorithm>
#include <cmath>

namespace scruple::plan {

using check::Chemical;
using check::Content;
using check::Id;

namespace {

bool same_thing(const Total& a, const Total& b) {
    return a.isomer == b.isomer && a.core == b.core;
}

chemistry::Formula dry(const Chemical& chemical) {
    return chemical.forms.empty() ? chemistry::Formula{} : chemistry::without_water(chemical.forms.front().formula);
}

}  // namespace

const std::map<Totals::Atoms, int>& Totals::chemicals_of() const {
    if (chemicals_of_.empty())
        for (const Chemical& chemical : model_.chemicals) ++chemicals_of_[dry_atoms(chemical)];
    return chemicals_of_;
}

Totals::Atoms Totals::dry_atoms(const Chemical& chemical) {
    Atoms atoms;
    for (const auto& [element, count] : dry(chemical).atoms) atoms.emplace_back(element, count);
    return atoms;
}

/// Ascorbic and isoascorbic acid are not one another, though their atoms are the same.
bool Totals::has_isomer(Id chemical) const {
    const Chemical& it = model_.chemicals[chemical];
    return chemistry::is_organic(dry(it)) && chemicals_of().at(dry_atoms(it)) > 1;
}

void Totals::add(std::vector<Total>& totals, const Content& content, const chemistry::Formula& species,
                 double times) const {
    const auto cores = chemistry::cores_of(species);
    if (!cores) return;
    const bool tied = chemistry::is_organic(species) && has_isomer(content.chemical);
    const Id acid = model_.chemicals[content.chemical].salt_of;
    Total total{cores->core, tied ? (acid == check::none ? content.chemical : acid) : check::none,
                content.mol_per_l * times * cores->count.to_double()};
    const auto known = std::ranges::find_if(totals, [&](const Total& one) { return same_thing(one, total); });
    if (known == totals.end())
        totals.push_back(std::move(total));
    else
        known->mol_per_l += total.mol_per_l;
}

std::vector<Total> Totals::of(const std::vector<Content>& contents) const {
    std::vector<Total> totals;
    for (const Content& content : contents) {
        const Chemical& chemical = model_.chemicals[content.chemical];
        for (const check::Ion& ion : chemical.ions) add(totals, content, ion.formula, ion.coefficient);
        if (chemical.ions.empty() && content.form < chemical.forms.size())
            add(totals, content, chemical.forms[content.form].formula, 1);
    }
    std::erase_if(totals, [](const Total& total) { return total.mol_per_l <= 0; });
    return totals;
}

std::optional<double> percent_apart(const std::vector<Total>& a, const std::vector<Total>& b) {
    if (a.size() != b.size()) return std::nullopt;
    double most = 0;
    for (const Total& total : a) {
        const auto other = std::ranges::find_if(b, [&](const Total& one) { return same_thing(one, total); });
        if (other == b.end()) return std::nullopt;
        const double larger = std::max(total.mol_per_l, other->mol_per_l);
        most = std::max(most, std::abs(total.mol_per_l - other->mol_per_l) / larger * 100);
    }
    return most;
}

}  // namespace scruple::plan
