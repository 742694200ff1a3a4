// SPDX-License-Identifier: MIT
// A set of acids and bases put together from the reference tables pKa_25C.csv and sit_coefficients.csv.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/chemistry/constant.hpp"
#include "scruple/chemistry/speciation.hpp"

namespace scruple::test {

class Shelf {
  public:
    Shelf();

    /// A mixture of components by the names of the table (`Na`, `Sfi`, `B`, `C`, `Citr`, `Acet`, `P`, `Asc`, `Cl`),
    /// mol/kg.
    [[nodiscard]] chemistry::Mixture mixture(const std::map<std::string, double>& totals, double celsius) const;
    /// Where a species stands in such a mixture.
    [[nodiscard]] chemistry::Index index_of(const std::map<std::string, double>& totals,
                                            std::string_view species) const;
    /// Of a row that gives a log K instead of a pK: `name/step`.
    [[nodiscard]] double log_k_at(std::string_view key, double celsius) const;

  private:
    struct Member {
        std::string name;
        std::string component;
        chemistry::Species species;
        std::vector<std::pair<std::string, double>> constants;  ///< of the table, with their sign in log K
    };
    void add(std::string name, std::string component, chemistry::Species species,
             std::vector<std::pair<std::string, double>> constants = {});

    std::map<std::string, chemistry::Constant, std::less<>> constants_;
    std::map<std::pair<std::string, std::string>, double> epsilons_;
    std::vector<Member> members_;
};

}  // namespace scruple::test
