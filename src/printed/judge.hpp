// SPDX-License-Identifier: MIT
// What a line comes to under a reading, and how well the page's columns and common practice bear it out.
#pragma once

#include "usual.hpp"
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

struct SolutionStrength {
    double times = 1;              ///< as strong as in use
    bool may_be_stronger = false;  ///< one part of several, of which the page does not say how they are mixed
};

class Judge {
  public:
    Judge(const check::Model& model, const Layout& layout, Role role) : model_(model), layout_(layout), role_(role) {}

    [[nodiscard]] PerLitre per_litre(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const;
    /// By the first column that has an amount.
    [[nodiscard]] PerLitre per_litre(std::size_t line, const Way& way, const Shared& shared) const;
    /// Each further column against the first that has an amount; a metric one is the one that was rounded.
    [[nodiscard]] std::vector<Compared> compared(std::size_t line, const Way& way, const Shared& shared) const;
    [[nodiscard]] Weights weights(std::size_t line, const Way& way, const Shared& shared) const;
    /// g/l that dissolve near 20 °C; 0 where the library does not say.
    [[nodiscard]] double dissolves(check::Id chemical, check::Id form) const;

    /// What an amount holds of the chemical itself, per litre, in g: of a solution its strength's share, of a pure
    /// liquid by its density. 0 where that is not known. `column` is whichever is asked about.
    [[nodiscard]] double substance(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const;
    /// By the first column that has an amount.
    [[nodiscard]] double substance(std::size_t line, const Way& way, const Shared& shared) const;

    /// What the solution in use usually holds of it, at the strength of the page's solution.
    [[nodiscard]] std::optional<Range> usual(std::size_t line, check::Id form) const;

    void set_strengths(std::vector<SolutionStrength> strengths) { strengths_ = std::move(strengths); }
    [[nodiscard]] SolutionStrength strength(std::size_t solution) const {
        return solution < strengths_.size() ? strengths_[solution] : SolutionStrength{};
    }
    /// 1 for a metric column against another kind, -1 the other way round, 0 for two of a kind.
    [[nodiscard]] int direction(std::size_t column, std::size_t against) const;
    [[nodiscard]] Role role() const { return role_; }

  private:
    [[nodiscard]] double cost_of_alternatives(std::size_t line, const Way& way, const Shared& shared) const;
    /// What a volume is to be multiplied with to be a weight, or the other way round; 1 where no density tells.
    [[nodiscard]] double as_the_other_kind(std::size_t line, const Way& way, bool by_volume) const;
    [[nodiscard]] double grams_in_ml(const Known& known, const Way& way) const;

    const check::Model& model_;
    const Layout& layout_;
    Role role_;
    std::vector<SolutionStrength> strengths_{};
};

/// Adds readings in which the metric column is stronger than the others throughout, by as much as most lines say.
void add_stronger(const Judge& judge, const Layout& layout, std::vector<Shared>& shared);

/// How many times stronger than in use each solution is: by the page's own directions, else by what fits its lines
/// best, with a whole number up to 10; 1 where it is unclear.
[[nodiscard]] std::vector<SolutionStrength> strengths_of(const Judge& judge, const Page& page, const Layout& layout,
                                                         const std::vector<Shared>& shared);

}  // namespace scruple::printed
