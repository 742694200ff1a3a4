// SPDX-License-Identifier: MIT
#include "scruple/chemistry/constant.hpp"

#include <cmath>
#include <numbers>

namespace scruple::chemistry {
namespace {

constexpr double gas_constant = 8.314462618;  // J/(mol K), exact since 2019
constexpr double zero_celsius = 273.15;
constexpr double reference = 298.15;

/// Of water at 1 bar.
double dielectric_constant(double kelvin) {
    const double at_1000_bar = 342.79 * std::exp(kelvin * (-5.0866e-3 + 9.4690e-7 * kelvin));
    const double c = -2.0525 + 3115.9 / (kelvin - 182.89);
    const double b = -8032.5 + 4.2142e6 / kelvin + 2.1417 * kelvin;
    return at_1000_bar + c * std::log((b + 1) / (b + 1000));
}

}  // namespace

double pk_at(const Constant& constant, double celsius) {
    if (!constant.enthalpy) return constant.pk;
    const double kelvin = celsius + zero_celsius;
    const double by_enthalpy = -*constant.enthalpy * 1000 * (1 / kelvin - 1 / reference);
    const double by_capacity =
        constant.heat_capacity.value_or(0) * (reference / kelvin - 1 + std::log(kelvin / reference));
    return constant.pk - (by_enthalpy + by_capacity) / gas_constant * std::numbers::log10e;
}

double water_density(double celsius) {
    const double t = celsius;
    const double above =
        999.83952 +
        t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t))));
    return above / (1 + 16.879850e-3 * t) / 1000;
}

double debye_hueckel_a(double celsius) {
    const double kelvin = celsius + zero_celsius;
    return 1.82483e6 * std::sqrt(water_density(celsius)) * std::pow(dielectric_constant(kelvin) * kelvin, -1.5);
}

}  // namespace scruple::chemistry
