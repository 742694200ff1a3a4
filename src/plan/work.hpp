// SPDX-License-Identifier: MIT
// From the lines of a batch to numbered work and a gather list, scaled, on the instruments of a bench.
#pragma once

#include <string>
#include <vector>

#include "measures.hpp"
#include "script.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

struct Batch {
    const check::Model& model;
    const Script& script;
    check::Exact scale;     ///< of the batch as written
    check::Exact makes_ml;  ///< scaled
    const Measures& measures;
};

struct Worked {
    std::vector<Work> work;
    std::vector<Gathered> gather;
    std::vector<std::string> assumed;
};

[[nodiscard]] Worked work_of(const Batch& batch);

}  // namespace scruple::plan
