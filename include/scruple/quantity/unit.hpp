// SPDX-License-Identifier: MIT
// Units of the trade, and what is ambiguous among them.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "scruple/quantity/exact.hpp"

namespace scruple::quantity {

enum class Dimension : std::uint8_t { mass, volume, amount, temperature, time, area, strength, density, count };

/// Every unit; units.inc declares each with its spellings, dimension and factor.
enum class Unit : std::uint8_t {
    none,  ///< no unit stands there, or none that is known
#define SCRUPLE_UNIT(id, dimension, numerator, denominator, shown, spellings) id,
#include "scruple/quantity/units.inc"
#undef SCRUPLE_UNIT
};

/// A strength compares different things, and its factor is in what it compares: g per litre for `% w/v`, g/l
/// and mg/l; g per g for `% w/w` and ppm (parts by mass); ml per ml for `% v/v`; mol per litre for mol/l and mmol/l.
struct UnitInfo {
    Unit unit;
    Dimension dimension;
    Exact factor;  ///< how many base units one of it is: g, ml, mol, °C step, s, cm², or as the strength says
    std::string_view shown;                   ///< the spelling that is printed
    std::vector<std::string_view> spellings;  ///< all that are read, shown first
};

[[nodiscard]] const UnitInfo& info(Unit unit);  ///< unit must not be none
[[nodiscard]] std::span<const UnitInfo> all_units();

/// The spelling to print after `value`: `1 day`, `2 days`, `0.5 days`.
[[nodiscard]] std::string_view shown_for(const Exact& value, Unit unit);

/// The unit that a spelling means; `none` where it means no one unit. Letter case counts. A run of blanks, tabs
/// and no-break blanks stands for one blank, and after `%` for none.
[[nodiscard]] Unit find_unit(std::string_view spelling);

/// A spelling the trade uses for several units, such as `oz`; what it may be read as, and what to write.
struct AmbiguousUnit {
    std::string_view spelling;
    std::string_view
        readings;            ///< "the avoirdupois ounce (28.35 g), the apothecaries' ounce (31.10 g) or a fluid ounce"
    std::string_view write;  ///< "`oz av`, `oz ap`, `fl oz us` or `fl oz uk`"
};
/// Blanks as in find_unit; a full stop at the end is passed over (`oz.`). Null where nothing is known.
[[nodiscard]] const AmbiguousUnit* find_ambiguous(std::string_view spelling);
[[nodiscard]] std::span<const AmbiguousUnit> all_ambiguous();

/// In base units: g, ml, mol, s, cm², g/ml, drops. Not for temperatures (to_celsius) or percents (see UnitInfo).
[[nodiscard]] Exact to_base(const Exact& value, Unit unit);
[[nodiscard]] Exact from_base(const Exact& base, Unit unit);
/// °C from °C or °F: °C = (°F − 32) × 5/9 exactly.
[[nodiscard]] Exact to_celsius(const Exact& value, Unit unit);

}  // namespace scruple::quantity
