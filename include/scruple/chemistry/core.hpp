// SPDX-License-Identifier: MIT
// What is left of a species when water and hydrogen ions do not count.
#pragma once

#include <optional>
#include <vector>

#include "scruple/chemistry/formula.hpp"

namespace scruple::chemistry {

/// In water, hydrogen ions and water itself come and go at once: carbonate and bicarbonate, metaborate and borate and
/// boric acid are each one thing in more or less acid surroundings. Two neutral solutions with the same amounts of all
/// cores are the same solution, since the hydrogen ions then follow from the charge.
struct Core {
    std::vector<Formula::Count> atoms;  ///< sorted by element; of one core
    quantity::Exact state;  ///< what keeps sulfite and sulfate apart: the oxidation numbers of the atoms, summed
    friend bool operator==(const Core&, const Core&) = default;
};

struct Cores {
    Core core;
    quantity::Exact count;  ///< in one of the species
};

/// nullopt for water, hydrogen and hydroxide ions. Ions of several boron, sulfur or chromium atoms that water takes
/// apart (tetraborate, metabisulfite, dichromate) count as so many cores. Organic species (two carbon atoms or more)
/// keep their oxygen; isomers have one core, and whoever compares has to tell them apart by name.
[[nodiscard]] std::optional<Cores> cores_of(const Formula& species);

/// Two carbon atoms or more.
[[nodiscard]] bool is_organic(const Formula& species);

}  // namespace scruple::chemistry
