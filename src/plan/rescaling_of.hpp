// SPDX-License-Identifier: MIT
// From a script and a bench to the card's figures for any volume.
#pragma once

#include "script.hpp"
#include "scruple/plan/rescaling.hpp"

namespace scruple::plan {

/// `written_ml`: above 0. `bench`: nullptr where nothing is rounded to an instrument.
[[nodiscard]] Rescaling rescaling_of(const check::Model& model, const Script& script, const check::Bench* bench,
                                     const check::Exact& written_ml, const check::Exact& card_ml);

}  // namespace scruple::plan
