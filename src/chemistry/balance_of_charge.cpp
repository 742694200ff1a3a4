// SPDX-License-Identifier: MIT
#include "balance_of_charge.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

namespace scruple::chemistry {
namespace {

// No solution lies outside: pH −20 to 40, with room for activity coefficients far from 1.
constexpr double lowest_ln_h = -40 * std::numbers::ln10;
constexpr double highest_ln_h = 20 * std::numbers::ln10;
constexpr double tolerance = 1e-13;
constexpr int most_steps = 200;

}  // namespace

ChargeBalance::ChargeBalance(const Mixture& mixture)
    : molality(mixture.species.size()),
      ln_h(-7 * std::numbers::ln10),
      mixture_(mixture),
      ln_k_(mixture.species.size()),
      members_(mixture.totals.size()),
      ln_free_(mixture.totals.size()),
      factor_(mixture.species.size()) {
    for (Index i = 0; i < mixture.species.size(); ++i) {
        ln_k_[i] = mixture.species[i].log_k * std::numbers::ln10;
        if (mixture.species[i].component != no_component) members_[mixture.species[i].component].push_back(i);
    }
    for (std::size_t c = 0; c < ln_free_.size(); ++c) ln_free_[c] = std::log(mixture.totals[c]);
}

bool ChargeBalance::held(std::size_t component) const {
    return mixture_.held && mixture_.species[mixture_.held->species].component == component;
}

/// Newton's method on ln(total found) against ln(free activity): convex and rising, so that it converges from
/// anywhere. Where all members have one unit, all of them are as much too many, and one division ends it.
void ChargeBalance::balance_mass(std::size_t component) {
    const auto& members = members_[component];
    const double total = mixture_.totals[component];
    double& x = ln_free_[component];
    for (int step = 0; step < most_steps; ++step) {
        double found = 0;
        double slope = 0;
        for (const Index i : members) {
            const int units = mixture_.species[i].units;
            molality[i] = std::exp(factor_[i] + units * x);
            found += units * molality[i];
            slope += units * units * molality[i];
        }
        const double off = std::log(found / total);
        if (std::abs(off) < tolerance) return;
        x -= off * found / slope;
        if (slope > found) continue;
        for (const Index i : members) molality[i] *= total / found;
        return;
    }
}

void ChargeBalance::balance_masses() {
    for (std::size_t c = 0; c < members_.size(); ++c) {
        if (!held(c)) {
            balance_mass(c);
            continue;
        }
        const auto& [species, activity] = *mixture_.held;
        const auto& gas = mixture_.species[species];
        ln_free_[c] = (std::log(activity) - ln_k_[species] - gas.protons * ln_h - gas.waters * ln_water_) / gas.units;
        for (const Index i : members_[c]) molality[i] = std::exp(factor_[i] + mixture_.species[i].units * ln_free_[c]);
    }
}

void ChargeBalance::set_molalities(const std::vector<double>& ln_gamma, double ln_water) {
    ln_water_ = ln_water;
    for (std::size_t i = 0; i < factor_.size(); ++i) {
        const auto& species = mixture_.species[i];
        factor_[i] = ln_k_[i] + species.protons * ln_h + species.waters * ln_water - ln_gamma[i];
        if (species.component == no_component) molality[i] = std::exp(factor_[i]);
    }
    balance_masses();
}

ChargeBalance::Slope ChargeBalance::imbalance(const std::vector<double>& ln_gamma, double ln_water) {
    set_molalities(ln_gamma, ln_water);
    double positive = 0, negative = 0, rise = 0, fall = 0;
    const auto count = [&](Index i, double change) {
        const int z = mixture_.species[i].charge;
        (z > 0 ? positive : negative) += std::abs(z) * molality[i];
        (z > 0 ? rise : fall) += std::abs(z) * molality[i] * change;
    };
    for (Index i = 0; i < factor_.size(); ++i)
        if (mixture_.species[i].component == no_component) count(i, mixture_.species[i].protons);
    for (std::size_t c = 0; c < members_.size(); ++c) {
        double cross = 0, square = 0;
        for (const Index i : members_[c]) {
            const auto& species = mixture_.species[i];
            cross += species.units * species.protons * molality[i];
            square += species.units * species.units * molality[i];
        }
        double free_change = square > 0 ? -cross / square : 0;
        if (held(c)) {
            const auto& gas = mixture_.species[mixture_.held->species];
            free_change = -static_cast<double>(gas.protons) / gas.units;
        }
        for (const Index i : members_[c])
            count(i, mixture_.species[i].protons + mixture_.species[i].units * free_change);
    }
    return {std::log(positive / negative), rise / positive - fall / negative};
}

void ChargeBalance::solve(const std::vector<double>& ln_gamma, double ln_water) {
    double low = lowest_ln_h;
    double high = highest_ln_h;
    for (int step = 0; step < most_steps; ++step) {
        const auto [value, derivative] = imbalance(ln_gamma, ln_water);
        if (std::abs(value) < tolerance) return;
        (value < 0 ? low : high) = ln_h;
        double next = ln_h - value / derivative;
        if (!(next > low && next < high)) next = (low + high) / 2;
        if (std::abs(next - ln_h) < 1e-15 * std::abs(ln_h)) return;
        ln_h = next;
    }
}

double ChargeBalance::charge_residual() const {
    double sum = 0, size = 0;
    for (std::size_t i = 0; i < molality.size(); ++i) {
        sum += mixture_.species[i].charge * molality[i];
        size += std::abs(mixture_.species[i].charge) * molality[i];
    }
    return size > 0 ? std::abs(sum) / size : 0;
}

double ChargeBalance::mass_residual() const {
    double worst = 0;
    for (std::size_t c = 0; c < members_.size(); ++c) {
        if (held(c)) continue;
        double found = 0;
        for (const Index i : members_[c]) found += mixture_.species[i].units * molality[i];
        worst = std::max(worst, std::abs(found / mixture_.totals[c] - 1));
    }
    return worst;
}

}  // namespace scruple::chemistry
