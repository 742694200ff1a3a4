// SPDX-License-Identifier: MIT
// How far an amount may be off.
#pragma once

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// As a share of the amount: half a division of the instrument that takes it, where the workspace has one bench, else
/// 1 %; and half a percent for what the jar holds. Molar masses add nothing to that: they have five digits.
/// `measure` is in g, ml, mol or drops by `addition.by`.
[[nodiscard]] double give_or_take(const Model& model, const Addition& addition, const Exact& measure);

/// Of the sum of two amounts.
[[nodiscard]] double give_or_take_of_sum(double one, double one_off, double other, double other_off);

}  // namespace scruple::check
