// SPDX-License-Identifier: MIT
// How much of a chemical dissolves, at any temperature that its `dissolves` lines reach.
//
// Figures are mol of the chemical in a kg of the solvent. A form's water of crystallisation is water once it is
// dissolved, so that the lines of all forms of a chemical speak of the same thing. Between two temperatures the
// logarithm of that figure is linear in the reciprocal of the absolute temperature (van 't Hoff's law, with the heat of
// solution taken as constant there); at the temperatures of the lines it is exactly theirs. No line reaches further
// than `reach_celsius` beyond the lowest and the highest temperature: outside nothing is known.
#pragma once

#include <optional>

#include "scruple/check/model.hpp"

namespace scruple::check {

inline constexpr double reach_celsius = 2.5;

/// The chemical that the name of a solvent stands for; water where there is no name, none where it is not known.
[[nodiscard]] Id solvent_called(const Model& model, std::string_view name);

/// mol/kg of the solvent in a saturated solution; nullopt where no line tells.
[[nodiscard]] std::optional<double> saturated_mol_per_kg(const Model& model, Id chemical, Id solvent, double celsius);

/// The least of what the lines for a solvent tell, mol/kg: at no temperature is it less. 0 where none tells.
[[nodiscard]] double least_saturated_mol_per_kg(const Chemical& chemical, Id solvent);

/// The lowest temperature from `celsius` up, in whole degrees, at which that much dissolves; nullopt where none is
/// known.
[[nodiscard]] std::optional<double> celsius_to_dissolve(const Model& model, Id chemical, Id solvent, double mol_per_kg,
                                                        double celsius);

/// g of a form that dissolve in so many g of other water, with the water that its crystals bring; nullopt where they
/// bring enough for any amount.
[[nodiscard]] std::optional<double> grams_dissolved(const Form& form, double mol_per_kg, double water_g);

/// g of other water that so many g of a form want; 0 where the crystals bring enough.
[[nodiscard]] double water_to_dissolve(const Form& form, double mol_per_kg, double grams);

/// What a ml of a saturated solution holds, in g of the addition's form, the volume of the solution being its solvent
/// at 1 g/ml and the estimated room of the salt. Beyond the temperatures of the lines the nearest line counts.
[[nodiscard]] std::optional<Exact> saturated_grams_per_ml(const Model& model, const Addition& addition,
                                                          const Interval& at);

}  // namespace scruple::check
