// SPDX-License-Identifier: MIT
#include "scruple/chemistry/speciation.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "activity.hpp"
#include "balance_of_charge.hpp"
#include "scruple/chemistry/nearby.hpp"

namespace scruple::chemistry {
namespace {

constexpr double at_rest = 1e-9;  // of ln γ
constexpr int most_rounds = 300;
constexpr double most_off = 1e-9;  // of charges and masses

/// Takes a step towards the new coefficients, shorter each time the last one did not come nearer.
class Damped {
  public:
    double step(std::vector<double>& ln_gamma, const std::vector<double>& wanted) {
        double change = 0;
        for (std::size_t i = 0; i < wanted.size(); ++i) change = std::max(change, std::abs(wanted[i] - ln_gamma[i]));
        if (change > 0.9 * last_) share_ = std::max(share_ * 0.7, 0.05);
        last_ = change;
        for (std::size_t i = 0; i < wanted.size(); ++i) ln_gamma[i] += share_ * (wanted[i] - ln_gamma[i]);
        return change;
    }

  private:
    double share_ = 1;
    double last_ = HUGE_VAL;
};

/// Begins from these.
Speciation search(const Mixture& mixture, ChargeBalance balance, std::vector<double> ln_gamma, double ln_water) {
    Activity activity(mixture);
    Damped damped;
    Speciation result;
    while (!result.converged && result.rounds < most_rounds) {
        ++result.rounds;
        balance.solve(ln_gamma, ln_water);
        activity.update(balance.molality);
        ln_water = activity.ln_water;
        result.converged = damped.step(ln_gamma, activity.ln_gamma) < at_rest;
    }
    result.ph = -balance.ln_h * std::numbers::log10e;
    result.ionic_strength = activity.ionic_strength;
    result.water_activity = std::exp(activity.ln_water);
    result.davies_share = activity.davies_share;
    result.log_gamma = std::move(activity.ln_gamma);
    for (double& value : result.log_gamma) value *= std::numbers::log10e;
    result.charge_residual = balance.charge_residual();
    result.mass_residual = balance.mass_residual();
    result.converged = result.converged && result.charge_residual < most_off && result.mass_residual < most_off;
    result.molality = std::move(balance.molality);
    return result;
}

}  // namespace

Speciation speciate(const Mixture& mixture) {
    return search(mixture, ChargeBalance(mixture), std::vector<double>(mixture.species.size()), 0);
}

Speciation speciate_near(const Speciation& known, const Mixture& mixture) {
    ChargeBalance balance(mixture);
    balance.ln_h = -known.ph * std::numbers::ln10;
    std::vector<double> ln_gamma(mixture.species.size());
    std::ranges::transform(known.log_gamma, ln_gamma.begin(),
                           [](double log_gamma) { return log_gamma * std::numbers::ln10; });
    return search(mixture, std::move(balance), std::move(ln_gamma), std::log(known.water_activity));
}

}  // namespace scruple::chemistry
