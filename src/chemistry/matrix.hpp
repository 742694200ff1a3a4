// SPDX-License-Identifier: MIT
// Small exact matrices: what balancing a reaction takes of linear algebra.
#pragma once

#include <vector>

#include "scruple/quantity/exact.hpp"

namespace scruple::chemistry {

using Vector = std::vector<quantity::Exact>;
using Matrix = std::vector<Vector>;  ///< rows of one length

/// A basis of all x with `matrix` · x = 0, by elimination; `columns` long each.
[[nodiscard]] std::vector<Vector> null_space(Matrix matrix, std::size_t columns);

/// The edges of all x ≥ 0 with `matrix` · x = 0: every such x is a sum of multiples of them, and none is one of the
/// others. By double description (Motzkin and others, 1953): one equation after another cuts the cone. `columns`
/// is at most 32.
[[nodiscard]] std::vector<Vector> edges_of_cone(const Matrix& matrix, std::size_t columns);

/// Divided by the largest number that leaves all of them whole.
[[nodiscard]] Vector in_smallest_whole_numbers(Vector vector);

}  // namespace scruple::chemistry
