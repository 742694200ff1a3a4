// SPDX-License-Identifier: MIT
#include "scruple/chemistry/core.hpp"

#include <algorithm>
#include <array>

namespace scruple::chemistry {

using quantity::Exact;

namespace {

Exact count_of(const Formula& formula, std::string_view wanted) {
    for (const auto& [element, atoms] : formula.atoms)
        if (symbol(element) == wanted) return atoms;
    return 0;
}

/// Elements whose ions of several atoms fall apart in water into ions of one, without changing their state.
bool falls_apart(const std::vector<Formula::Count>& atoms) {
    constexpr std::array elements{"B", "S", "Cr"};
    return atoms.size() == 1 && std::ranges::find(elements, symbol(atoms.front().element)) != elements.end();
}

}  // namespace

bool is_organic(const Formula& species) {
    return count_of(species, "C") >= Exact(2);
}

std::optional<Cores> cores_of(const Formula& species) {
    const Formula dry = without_water(species);
    const bool organic = is_organic(dry);
    const Exact oxygen = organic ? Exact(0) : count_of(dry, "O");
    Cores cores{{dry.atoms, Exact(dry.charge) - count_of(dry, "H") + oxygen * 2}, 1};
    std::erase_if(cores.core.atoms, [organic](const Formula::Count& count) {
        return symbol(count.element) == "H" || (symbol(count.element) == "O" && !organic);
    });
    if (cores.core.atoms.empty() && cores.core.state.is_zero()) return std::nullopt;
    if (!falls_apart(cores.core.atoms)) return cores;
    cores.count = cores.core.atoms.front().atoms;
    cores.core.atoms.front().atoms = 1;
    cores.core.state /= cores.count;
    return cores;
}

}  // namespace scruple::chemistry
