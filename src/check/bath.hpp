// SPDX-License-Identifier: MIT
// Contents as a mixture of acids and bases in water.
#pragma once

#include <span>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// The part of the table of acids and bases that a solution needs, ready to be worked out.
class Bath {
  public:
    /// Or why it cannot be.
    [[nodiscard]] static std::variant<Bath, std::string> of(const Model& model, std::span<const Content> contents,
                                                            double celsius);

    [[nodiscard]] chemistry::Speciation solve() const { return chemistry::speciate(mixture_); }

    // What else it may be, from what solve() has found:

    /// with one constant of the table off by so much;
    [[nodiscard]] chemistry::Speciation with_constant(const chemistry::Speciation& found, Id constant,
                                                      double off) const;
    /// with one of pairs() off by so much;
    [[nodiscard]] chemistry::Speciation with_pair(const chemistry::Speciation& found, std::size_t pair,
                                                  double off) const;
    /// with one of the contents more by that share;
    [[nodiscard]] chemistry::Speciation with_content(const chemistry::Speciation& found, const Content& content,
                                                     double share) const;
    /// with so much of an acid (negative charge) or alkali (positive) that nothing else has to do with;
    [[nodiscard]] chemistry::Speciation with_trace(const chemistry::Speciation& found, int charge,
                                                   double mol_per_kg) const;
    /// with a gas of the table as the air holds it.
    [[nodiscard]] chemistry::Speciation open_to(const chemistry::Speciation& found, const AcidBase::Gas& gas) const;

    /// How much of a gas is in the solution as such, in mol/kg; 0 where it is not in it.
    [[nodiscard]] double dissolved(const AcidBase::Gas& gas, const chemistry::Speciation& found) const;
    /// How strongly a gas presses out of the solution, in atm; 0 where it is not in it.
    [[nodiscard]] double pressure(const AcidBase::Gas& gas, const chemistry::Speciation& found) const;

    [[nodiscard]] const std::vector<Id>& constants() const { return constants_; }
    [[nodiscard]] const std::vector<Id>& pairs() const { return pairs_; }

  private:
    Bath(const Model& model, double celsius) : table_(&model.acid_base) { mixture_.celsius = celsius; }
    void add(const Content& content, double kg_of_water);
    void gather_species();
    void set_constants();

    const AcidBase* table_;
    chemistry::Mixture mixture_;
    std::vector<Id> known_;              ///< of each species, in the table
    std::vector<Id> local_;              ///< of each of the table's, the species; none where it is not in it
    std::vector<Id> local_component_;    ///< of each of the table's components
    std::vector<double> totals_;         ///< mol/kg of the table's components
    std::vector<Id> constants_, pairs_;  ///< of the table, that matter here
    double kg_of_water_ = 1;
};

}  // namespace scruple::check
