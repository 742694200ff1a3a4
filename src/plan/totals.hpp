// SPDX-License-Identifier: MIT
// A solution as what stays of it while acids and bases settle: two with the same totals are one.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "scruple/check/contents.hpp"
#include "scruple/chemistry/core.hpp"

namespace scruple::plan {

/// So many moles a litre of one core. `isomer` is a chemical whose formula another chemical has too; none otherwise.
struct Total {
    chemistry::Core core;
    check::Id isomer = check::none;
    double mol_per_l = 0;
};

class Totals {
  public:
    explicit Totals(const check::Model& model) : model_(model) {}

    [[nodiscard]] std::vector<Total> of(const std::vector<check::Content>& contents) const;

  private:
    void add(std::vector<Total>& totals, const check::Content& content, const chemistry::Formula& species,
             double times) const;
    [[nodiscard]] bool has_isomer(check::Id chemical) const;

    using Atoms = std::vector<std::pair<chemistry::Element, quantity::Exact>>;
    static Atoms dry_atoms(const check::Chemical& chemical);
    [[nodiscard]] const std::map<Atoms, int>& chemicals_of() const;

    const check::Model& model_;
    mutable std::map<Atoms, int> chemicals_of_;  ///< how many have the same; empty until the first is asked for
};

/// By how many percent what differs most differs; nullopt where one holds what the other does not.
[[nodiscard]] std::optional<double> percent_apart(const std::vector<Total>& a, const std::vector<Total>& b);

}  // namespace scruple::plan
