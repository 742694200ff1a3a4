// SPDX-License-Identifier: MIT
// How far an amount may be off.
#pragma once

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// As a share of the measure (g or ml): half a division of the instrument that takes it, or of each of a few fills, by
/// the root of the sum of squares; 1 % where the workspace has not one bench, or nothing on it takes so much.
[[nodiscard]] double give_or_take_of_measuring(const Model& model, bool by_weight, const Exact& measure);

/// The same for an addition, and of a chemical half a percent for what the jar holds, and what its molar mass may be
/// off by. `measure` is in g, ml, mol or drops by `addition.by`.
[[nodiscard]] double give_or_take(const Model& model, const Addition& addition, const Exact& measure);

/// Of the sum of two amounts.
[[nodiscard]] double give_or_take_of_sum(double one, double one_off, double other, double other_off);

}  // namespace scruple::check
