// SPDX-License-Identifier: MIT
// Mass action, mass balance and charge balance for given activity coefficients.
#pragma once

#include "scruple/chemistry/speciation.hpp"

namespace scruple::chemistry {

/// Works out molalities for a pH, and finds the pH at which charges balance.
class ChargeBalance {
  public:
    explicit ChargeBalance(const Mixture& mixture);

    /// Finds ln a(H+) and the molalities; starts from where it was left.
    void solve(const std::vector<double>& ln_gamma, double ln_water);

    std::vector<double> molality;
    double ln_h;
    [[nodiscard]] double charge_residual() const;
    [[nodiscard]] double mass_residual() const;

  private:
    struct Slope {
        double value, derivative;
    };
    /// ln of positive over negative charge at ln_h, and its derivative.
    Slope imbalance(const std::vector<double>& ln_gamma, double ln_water);
    void set_molalities(const std::vector<double>& ln_gamma, double ln_water);
    void balance_masses();
    void balance_mass(std::size_t component);
    [[nodiscard]] bool held(std::size_t component) const;

    const Mixture& mixture_;
    std::vector<double> ln_k_;
    std::vector<std::vector<Index>> members_;  ///< species of each component
    std::vector<double> ln_free_;              ///< ln activity of each component's first species
    std::vector<double> factor_;               ///< molality of each species where the free activity is 1
    double ln_water_ = 0;
};

}  // namespace scruple::chemistry
