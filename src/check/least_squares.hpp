// SPDX-License-Identifier: MIT
// The least squares of a few unknowns, where the way there is crooked.
#pragma once

#include <functional>
#include <optional>
#include <vector>

namespace scruple::check {

/// What is to be brought to nothing, at a point; nullopt where it cannot be known.
using Misses = std::function<std::optional<std::vector<double>>(const std::vector<double>&)>;

/// The point between `low` and `high` in each coordinate with the least sum of squares, by the method of Levenberg and
/// Marquardt from a grid of starts. Nullopt where no start can be judged.
[[nodiscard]] std::optional<std::vector<double>> least_squares(const Misses& misses, std::size_t unknowns, double low,
                                                               double high);

}  // namespace scruple::check
