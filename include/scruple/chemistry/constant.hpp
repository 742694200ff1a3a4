// SPDX-License-Identifier: MIT
// Equilibrium constants against temperature, and what water itself is like.
#pragma once

#include <optional>

namespace scruple::chemistry {

/// An equilibrium constant at 25 °C and how it moves with temperature.
struct Constant {
    double pk = 0;                          ///< −log10 K at 25 °C, ionic strength 0, molal
    std::optional<double> enthalpy{};       ///< kJ/mol, of the reaction as written
    std::optional<double> heat_capacity{};  ///< J/(mol K), of the reaction as written
    double give_or_take = 0;                ///< of the pK
};

/// pK at a temperature in °C: van 't Hoff's equation with a heat capacity that does not change,
///   ln K(T) = ln K(θ) − ΔH/R (1/T − 1/θ) + ΔC/R (θ/T − 1 + ln(T/θ)),   θ = 298.15 K
/// (as in Goldberg, Kishore & Lennen, J. Phys. Chem. Ref. Data 31 (2002) 231). Without an enthalpy it does not move.
[[nodiscard]] double pk_at(const Constant& constant, double celsius);

/// kg/l of pure water at 1 atm: Kell, J. Chem. Eng. Data 20 (1975) 97, recalled.
[[nodiscard]] double water_density(double celsius);

/// A of the Debye-Hückel law, kg½ mol−½, for log10: 1.82483e6 √ρ (ε T)^−3/2, with the dielectric constant
/// of Bradley & Pitzer, J. Phys. Chem. 83 (1979) 1599, at 1 bar (recalled). 0.510 at 25 °C.
[[nodiscard]] double debye_hueckel_a(double celsius);

}  // namespace scruple::chemistry
