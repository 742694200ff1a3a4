// SPDX-License-Identifier: MIT
// What is in a solution of acids and bases once they have come to rest, and so its pH.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace scruple::chemistry {

using Index = std::uint32_t;
inline constexpr Index no_component = 0xFFFFFFFF;

/// One kind of ion or molecule in water. It is made of `units` of the first species of its component, with
/// `protons` H+ and `waters` H2O taken up (given off where negative):
///   HCO3-: component carbonate whose first species is CO3-2, units 1, protons +1.
///   S2O5-2: of HSO3-, units 2, waters −1.    OH-: of no component, protons −1, waters +1.
struct Species {
    int charge = 0;
    Index component = no_component;
    int units = 1;
    int protons = 0;
    int waters = 0;
    double log_k = 0;  ///< log10 of the constant of that reaction, at the solution's temperature
};

/// How two ions of opposite charge differ from the Debye-Hückel law, in kg/mol: the ε of the specific ion
/// interaction theory.
struct Interaction {
    Index one = 0, other = 0;  ///< species
    double epsilon = 0;
};

/// A species whose activity is held by a gas above the solution, instead of its component's total.
struct Held {
    Index species = 0;
    double activity = 0;
};

/// H+ must be among the species (no component, protons +1), and so should OH-.
struct Mixture {
    std::vector<Species> species{};
    std::vector<double> totals{};  ///< mol/kg water, one a component, each above 0
    std::vector<Interaction> interactions{};
    double celsius = 25;
    std::optional<Held> held{};
};

struct Speciation {
    double ph = 0;              ///< −log10 of the activity of H+
    double ionic_strength = 0;  ///< mol/kg water
    double water_activity = 1;
    std::vector<double> molality{};   ///< mol/kg water, one a species
    std::vector<double> log_gamma{};  ///< log10 of its activity coefficient
    double charge_residual = 0;       ///< of the sum of all charges, over the sum of their sizes
    double mass_residual = 0;         ///< the largest of a component's total, over that total
    double davies_share = 0;  ///< of the charge on ions other than H+ and OH-, how much met no known interaction
    int rounds = 0;           ///< of the activity coefficients
    bool converged = false;   ///< and both residuals below 1e-9
};

/// Mass action, mass balance and charge balance, with activity coefficients by
///   log γ = −z² A √I / (1 + 1.5 √I) + Σ ε m      the specific ion interaction theory, as in the guidelines of
///                                                the NEA Thermochemical Database (TDB-2, Grenthe et al. 2000)
///   log γ = −z² A (√I / (1 + √I) − 0.3 I)        Davies (Ion Association, 1962), where no ε is known;
/// the last term keeps its value at I = 0.5 mol/kg above that, where the equation is out of its range. An ion that
/// knows some of its counter-ions is between the two, by the share of the counter-charge that is known. Molecules
/// have γ = 1. The activity of water is its mole fraction.
///
/// For given γ the surplus of positive charge only grows with the activity of H+ (its derivative is a sum of
/// variances), so that there is one pH; it is bracketed. γ is then brought up to date until it rests.
[[nodiscard]] Speciation speciate(const Mixture& mixture);

}  // namespace scruple::chemistry
