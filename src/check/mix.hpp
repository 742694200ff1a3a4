// SPDX-License-Identifier: MIT
// What is in a vessel, as far as it decides what dissolves in it and what may go in next.
#pragma once

#include <boost/container/small_vector.hpp>
#include <span>

#include "purposes.hpp"
#include "scruple/check/contents.hpp"

namespace scruple::check {

inline constexpr double water_g_per_mol = 18.015;

/// °C, from the lowest to the highest that it may have.
struct Warmth {
    double low = 20, high = 20;
};

struct Mix {
    struct Solute {
        Id chemical;
        Id form;  ///< in which it came first
        double mol;
    };
    struct Solvent {
        Id chemical;
        double g;
    };
    boost::container::small_vector<Solute, 8> solutes;
    boost::container::small_vector<Solvent, 2> solvents;  ///< with the water of crystals, bottles, percent solutions
    double ml = 0;                                        ///< solids by estimate
    Warmth celsius;
    Purposes purposes = 0;
    bool vague = false;  ///< a line leaves open how much solvent it brings

    /// What there is of a chemical; null where there is none.
    [[nodiscard]] const Solute* find(Id chemical) const;
    /// The one solvent that nearly all is dissolved in, and its g; none where there is no such one.
    [[nodiscard]] Solvent solvent() const;

    /// An addition of a chemical: g, ml, mol or drops by its `by`. What it is for is for the caller to say.
    void add(const Model& model, const Addition& addition, const Exact& measure);
    /// So many ml of a solution that holds this.
    void add(const Model& model, std::span<const Content> contents, double ml, Warmth warmth);
    /// Its chemical to the mark.
    void fill_up(const Model& model, const Addition& addition, double to_ml);
    /// A share of another.
    void add(const Mix& other, double share);

  private:
    void add_substance(const Model& model, Id chemical, Id form, double grams, double mol);
    void dissolve(Solute more);
    void thin(Id chemical, double g);
    void add_volume(double more_ml, Warmth warmth);
};

/// The form of a chemical that is meant, the first where none is said; of a chemical whose forms could not be read, one
/// that holds nothing.
[[nodiscard]] const Form& form_of(const Chemical& chemical, Id form);

/// How warm a line says it is; 20 °C where it does not.
[[nodiscard]] Warmth warmth_of(const Addition& addition);

}  // namespace scruple::check
