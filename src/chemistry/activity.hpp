// SPDX-License-Identifier: MIT
// Activity coefficients of a mixture; see speciation.hpp for the equations.
#pragma once

#include "scruple/chemistry/speciation.hpp"

namespace scruple::chemistry {

class Activity {
  public:
    explicit Activity(const Mixture& mixture);

    /// From molalities to ln γ and the rest below.
    void update(const std::vector<double>& molality);

    std::vector<double> ln_gamma;
    double ln_water = 0;
    double ionic_strength = 0;
    double davies_share = 0;

  private:
    void weigh_charges(const std::vector<double>& molality);
    void meet(const std::vector<double>& molality);

    const Mixture& mixture_;
    double a_;
    std::vector<double> known_;     ///< counter-charge that an ion has interactions with
    std::vector<double> specific_;  ///< Σ ε m
    double positive_ = 0, negative_ = 0;
};

}  // namespace scruple::chemistry
