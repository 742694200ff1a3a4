// SPDX-License-Identifier: MIT
// The lines of a derivation, each a sum with what it comes to and who says so.
#pragma once

#include <string>
#include <vector>

#include "measures.hpp"
#include "scruple/plan/why.hpp"

namespace scruple::plan {

/// `g`, `ml`, `mol` or `drops`.
[[nodiscard]] std::string unit_of(const check::Addition& addition);

class WhyLines {
  public:
    explicit WhyLines(const check::Model& model) : model_(model) {}

    /// As the recipe has it, in its own units and in base units.
    void written(const check::Addition& addition, const std::string& what, const check::Exact& amount,
                 const check::Exact& makes_ml);
    /// To the volume that is made; nothing where that is the one written.
    void scaled(const check::Exact& amount, const std::string& unit, const check::Exact& scale,
                const check::Exact& makes_ml);
    /// From what the recipe has to what is taken for it, mole for mole.
    void taken_for(const check::Addition& written, const check::Exact& amount, const check::Addition& taken);
    /// What a conversion takes out of a line's own water.
    void less(const check::Exact& written, const check::Exact& taken, const std::string& unit);
    /// How a `?` came to its amount: what is expected of the solution, and what it holds by its own line.
    void found_from(const check::Addition& addition, const check::Section& section, const check::Exact& amount);
    /// The millilitres of a solution that is so many parts of all.
    void parted(const check::Addition& addition, const std::string& what, const check::Exact& parts,
                const check::Exact& ml);
    /// From what is put in to grams a litre of so much solution.
    check::Exact by_the_litre(const check::Addition& addition, const check::Exact& measure, const check::Exact& ml);
    /// From grams of the reagent to what is measured of it; nothing where that is grams.
    void measured(const check::Addition& reagent, const check::Exact& measure, const std::string& what);
    /// From so much of the product, through the moles of the reaction and the excess, to grams of a reagent.
    void reacted(const check::Conversion& conversion, const check::Addition& product, const check::Exact& measure,
                 const check::Addition& reagent);
    /// To what the instrument reads.
    void rounded(const check::Addition& addition, const check::Exact& measure, const check::Exact& grams,
                 const Reading& reading);

    [[nodiscard]] std::size_t count() const { return lines_.size(); }
    /// Forgets all but the first so many.
    void cut_to(std::size_t count) { lines_.resize(count); }
    [[nodiscard]] std::vector<WhyLine> take() { return std::move(lines_); }

  private:
    void say(std::string sum, std::string result, std::string source) {
        lines_.push_back({std::move(sum), std::move(result), std::move(source), {}});
    }
    void molar_mass(const check::Chemical& chemical, check::Id form);
    check::Exact grams_held(const check::Addition& addition, const check::Exact& measure);
    check::Exact grams_by_mole(const check::Addition& addition, const check::Exact& mol);
    check::Exact moles_of(const check::Addition& product, const check::Exact& measure, check::Id form_in_reaction);
    check::Exact grams_of(const check::Exact& mol, const check::Chemical& chemical, check::Id form);
    check::Exact as_sold(const check::Exact& grams, const check::Form& form);
    check::Exact with_excess(const check::Conversion& conversion, const check::Addition& reagent,
                             const check::Exact& grams);

    const check::Model& model_;
    std::vector<WhyLine> lines_;
};

}  // namespace scruple::plan
