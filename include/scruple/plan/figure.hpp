// SPDX-License-Identifier: MIT
// Figures as they are printed: rounded once, here, so that every back end shows the same.
#pragma once

#include <string>

#include "scruple/quantity/exact.hpp"

namespace scruple::plan {

/// An amount to read on an instrument, or a plain figure.
struct Figure {
    quantity::Exact value;      ///< as printed: what is weighed or measured, in `unit`
    quantity::Exact exact;      ///< before rounding, in `unit`
    std::string text;           ///< `12.5`; no trailing zeros, a leading zero, never an exponent
    std::string unit;           ///< `g`, `kg`, `ml`, `l`, `drops`
    std::string instrument;     ///< `balance 0.1 g`, `graduate 10 ml`; empty where no bench is known
    double error_percent = 0;   ///< of the rounding, always positive

    [[nodiscard]] std::string with_unit() const { return text + "\u00A0" + unit; }
};

}  // namespace scruple::plan
