// SPDX-License-Identifier: MIT
// What the text and the page of a chemical both say.
#pragma once

#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::emit::words {

/// `20 to 25 °C`
[[nodiscard]] std::string celsius(const check::Interval& at);
/// `99.5 % w/w`
[[nodiscard]] std::string strength(const check::Strength& strength);
/// g/mol to three places.
[[nodiscard]] std::string molar_mass(const check::Form& form);
/// The other names of a form, and what the bottle holds.
[[nodiscard]] std::string about_form(const check::Chemical& chemical, check::Id form);
/// Other names that belong to no one form.
[[nodiscard]] std::vector<std::string> other_names(const check::Chemical& chemical);
/// `1.049 g/ml (glacial) at 25 °C (a handbook)`
[[nodiscard]] std::vector<std::string> densities(const check::Chemical& chemical);
/// `21.5 g (anhydrous) in 100 g water at 20 °C (a handbook)`
[[nodiscard]] std::vector<std::string> solubilities(const check::Chemical& chemical);
/// `2 Na+ + CO3-2`
[[nodiscard]] std::string ions(const check::Chemical& chemical);
/// What becomes of it in water, with every constant and its source, one a line.
[[nodiscard]] std::vector<std::string> equilibria(const check::Chemical& chemical);
[[nodiscard]] std::vector<std::string> owned(const std::vector<std::string_view>& views);

/// The form's name, or empty for `none`.
[[nodiscard]] std::string form_name(const check::Chemical& chemical, check::Id form);

}  // namespace scruple::emit::words
