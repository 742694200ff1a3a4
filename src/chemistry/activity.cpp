// SPDX-License-Identifier: MIT
#include "activity.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

#include "scruple/chemistry/constant.hpp"

namespace scruple::chemistry {
namespace {

constexpr double moles_in_kg_of_water = 55.508;
constexpr double davies_limit = 0.5;  // mol/kg
// Beyond this no solution is; a run of trial values must not overflow either.
constexpr double largest_log_gamma = 12;

}  // namespace

Activity::Activity(const Mixture& mixture)
    : ln_gamma(mixture.species.size(), 0.0),
      mixture_(mixture),
      a_(debye_hueckel_a(mixture.celsius)),
      known_(mixture.species.size()),
      specific_(mixture.species.size()) {}

void Activity::weigh_charges(const std::vector<double>& molality) {
    positive_ = negative_ = ionic_strength = 0;
    double all = 0;
    for (std::size_t i = 0; i < molality.size(); ++i) {
        const int z = mixture_.species[i].charge;
        (z > 0 ? positive_ : negative_) += std::abs(z) * molality[i];
        ionic_strength += 0.5 * z * z * molality[i];
        all += molality[i];
    }
    ln_water = -std::log1p(all / moles_in_kg_of_water);
}

void Activity::meet(const std::vector<double>& molality) {
    std::ranges::fill(known_, 0.0);
    std::ranges::fill(specific_, 0.0);
    for (const auto& [one, other, epsilon] : mixture_.interactions) {
        known_[one] += std::abs(mixture_.species[other].charge) * molality[other];
        known_[other] += std::abs(mixture_.species[one].charge) * molality[one];
        specific_[one] += epsilon * molality[other];
        specific_[other] += epsilon * molality[one];
    }
}

void Activity::update(const std::vector<double>& molality) {
    weigh_charges(molality);
    meet(molality);
    const double root = std::sqrt(ionic_strength);
    const double by_theory = root / (1 + 1.5 * root);
    const double by_davies = root / (1 + root) - 0.3 * std::min(ionic_strength, davies_limit);
    double unknown = 0;
    double charge = 0;
    for (std::size_t i = 0; i < molality.size(); ++i) {
        const auto& species = mixture_.species[i];
        if (species.charge == 0) continue;
        const double counter = species.charge > 0 ? negative_ : positive_;
        const double share = counter > 0 ? std::min(known_[i] / counter, 1.0) : 0.0;
        const double law = share * by_theory + (1 - share) * by_davies;
        const double log_gamma = specific_[i] - species.charge * species.charge * a_ * law;
        ln_gamma[i] = std::clamp(log_gamma, -largest_log_gamma, largest_log_gamma) * std::numbers::ln10;
        if (species.component == no_component) continue;
        unknown += (1 - share) * std::abs(species.charge) * molality[i];
        charge += std::abs(species.charge) * molality[i];
    }
    davies_share = charge > 0 ? unknown / charge : 0;
}

}  // namespace scruple::chemistry
