// SPDX-License-Identifier: MIT
// The pH of a solution from its contents.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// A pH, and how sure it is.
struct Ph {
    double value = 0;
    double low = 0, high = 0;
    double celsius = 20;
    double ionic_strength = 0;              ///< mol/kg water
    std::vector<std::string> widened_by{};  ///< what makes the range wide, the most first
};

/// Why no pH is given: `nothing is known of Cu+2 in water (copper sulfate)`
struct NoPh {
    std::string why;
};

/// The temperature for which a pH is given where nobody says another: a darkroom's.
inline constexpr double usual_celsius = 20;

/// By chemistry::speciate over what the library says of the contents in water. Carbon dioxide is kept in `value`;
/// where it would stand at more than a tenth of an atmosphere, the range goes on to what it is when it has left for
/// the air. The range adds up
///   - each constant's and each ion pair's give-or-take, each amount's, and 0.01 mmol/kg of acid or alkali that the air
///     or the jars may bring, by the root of the sum of squares;
///   - the model's own: 0.15 √I / (1 + √I), as far as two models of activity differ in tests/reference/phreeqc_pH.csv,
///     and where no ion pairs are known 0.3 I more, up to I = 1.
[[nodiscard]] std::variant<Ph, NoPh> ph_of(const Model& model, std::span<const Content> contents, double celsius);

/// The value alone, in a tenth of the time; nullopt where none is given.
[[nodiscard]] std::optional<double> ph_value_of(const Model& model, std::span<const Content> contents, double celsius);

/// `11.6`, `4.01`: as many decimals as the range is worth.
[[nodiscard]] std::string shown(double ph, const Ph& range);

}  // namespace scruple::check
