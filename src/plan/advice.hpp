// SPDX-License-Identifier: MIT
// What to do where an instrument cannot measure an amount well: through a percent solution, or a weaker one.
#pragma once

#include <string>
#include <vector>

#include "measures.hpp"
#include "scruple/check/model.hpp"

namespace scruple::plan {

/// The amount of one line, and the batch it is for.
struct Measuring {
    const check::Model& model;
    const check::Addition& addition;
    const Measures& measures;
    check::Exact exact;      ///< g or ml
    check::Exact makes_ml;   ///< of the batch
    const Reading& reading;  ///< what the bench makes of it
};

/// Through a percent solution: weighed on at least 50 divisions of a balance, dissolving by what the library knows,
/// no more than a quarter of the batch, and measured within 1 % on ten divisions or more. Where there is none such, a
/// finer balance or a larger batch.
[[nodiscard]] std::vector<std::string> weighing_advice(const Measuring& line);

/// Thinned with water where it is a solution in water, in drops where there is a dropper; else a finer
/// graduate or a larger batch.
[[nodiscard]] std::vector<std::string> measuring_advice(const Measuring& line);

}  // namespace scruple::plan
