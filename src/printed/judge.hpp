// SPDX-License-Identifier: MIT
// What a line comes to under a reading, and how well the page's columns bear it out.
#pragma once

#include "ways.hpp"

namespace scruple::printed {

/// A column's amount for a line, per litre of what the column makes.
struct PerLitre {
    Amount amount;
    double per_litre = 0;  ///< g/l or ml/l; 0 where the column gives no volume
};

/// What one column says against what another comes to.
struct Compared {
    std::size_t column = 0, against = 0;
    double printed = 0;     ///< g or ml, as the column has it
    double step = 0;        ///< of its last place
    double exact = 0;       ///< what the other comes to for the volume of this one
    bool same_kind = true;  ///< false: one is a weight and the other a volume
};

class Judge {
  public:
    Judge(const check::Model& model, const Layout& layout) : model_(model), layout_(layout) {}

    [[nodiscard]] PerLitre per_litre(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const;
    /// Each further column against the first that has an amount; a metric one is the one that was rounded.
    [[nodiscard]] std::vector<Compared> compared(std::size_t line, const Way& way, const Shared& shared) const;
    [[nodiscard]] double cost(std::size_t line, const Way& way, const Shared& shared) const;
    /// g/l that dissolve near 20 °C; 0 where the library does not say.
    [[nodiscard]] double dissolves(check::Id chemical, check::Id form) const;

  private:
    const check::Model& model_;
    const Layout& layout_;
};

/// Adds readings in which the metric column is stronger than the others throughout, by as much as several lines say.
void add_stronger(const Judge& judge, const Layout& layout, std::vector<Shared>& shared);

}  // namespace scruple::printed
