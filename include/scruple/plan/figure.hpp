// SPDX-License-Identifier: MIT
// Figures as they are printed: rounded once, here, so that every back end shows the same.
#pragma once

#include <string>

#include "scruple/quantity/exact.hpp"

namespace scruple::plan {

/// A blank that no line break parts: it stands between a number and its unit.
inline constexpr const char* unit_blank = "\u00A0";

/// An amount to read on an instrument, or a plain figure.
struct Figure {
    quantity::Exact value;     ///< as printed: what is weighed or measured, in `unit`
    quantity::Exact exact;     ///< before rounding, in `unit`
    std::string text;          ///< `12.5`; no trailing zeros, a leading zero, never an exponent
    std::string unit;          ///< `g`, `kg`, `ml`, `l`, `drops`
    std::string instrument;    ///< `balance 0.1 g`, `graduate 10 ml`; empty where no bench is known
    double error_percent = 0;  ///< of the rounding, always positive

    [[nodiscard]] std::string with_unit() const { return text + unit_blank + unit; }
};

/// Without an instrument: four significant figures, in g or ml below 10 000, from there in kg or l.
[[nodiscard]] Figure plain_grams(const quantity::Exact& grams);
[[nodiscard]] Figure plain_ml(const quantity::Exact& ml);
/// A figure in any unit, to so many significant figures (1 to 15).
[[nodiscard]] Figure plain(const quantity::Exact& value, std::string unit, int digits = 4);

/// What an instrument reads for an exact amount, both in g or ml; shown in kg or l from 10 000 on.
[[nodiscard]] Figure grams_as_read(const quantity::Exact& printed, const quantity::Exact& exact);
[[nodiscard]] Figure ml_as_read(const quantity::Exact& printed, const quantity::Exact& exact);

}  // namespace scruple::plan
