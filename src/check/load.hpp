// SPDX-License-Identifier: MIT
// One chemical in a mix against what its solvent dissolves. Each by itself: what others with the same ion do is left
// aside.
#pragma once

#include <optional>

#include "mix.hpp"

namespace scruple::check {

struct Load {
    Id chemical;
    Id form_id;  ///< in which it came first
    const Form* form;
    double mol;  ///< that are there
    Id solvent;
    double other_g;     ///< of the solvent, without what comes of the chemical's own crystals
    double mol_per_kg;  ///< of a saturated solution
    [[nodiscard]] double grams() const;
    /// g that dissolve; nullopt where the crystals bring enough water for any amount.
    [[nodiscard]] std::optional<double> dissolved_grams() const;
    /// mol/kg, were all of it dissolved.
    [[nodiscard]] double wanted_mol_per_kg() const;
};

/// Where there is more of a chemical than dissolves, by more than volumes and solubilities are known.
/// nullopt, too, where nothing can be said: how much solvent there is is open, it is a mixture, or no solubility
/// reaches so far; or where the chemical reacts with another that is there, and dissolves as what comes of it: an acid
/// and what is no salt with an alkali, an alkali with an acid, a buffer with a caustic alkali.
[[nodiscard]] std::optional<Load> too_much_of(const Model& model, const Mix& mix, Id chemical, double celsius);

/// Whether an alkali would take it up.
[[nodiscard]] bool dissolves_in_alkali(const Chemical& chemical);

}  // namespace scruple::check
