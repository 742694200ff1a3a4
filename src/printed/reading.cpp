// SPDX-License-Identifier: MIT
#include "reading.hpp"

#include <fmt/format.h>

#include "scruple/quantity/unit.hpp"

namespace scruple::printed {
namespace {

using quantity::Unit;

Unit fluid_unit(UnitWord word, Fluid fluid) {
    const bool us = fluid == Fluid::us;
    switch (word) {
        case UnitWord::ounce:
        case UnitWord::fluid_ounce:
            return us ? Unit::fluid_ounce_us : Unit::fluid_ounce_uk;
        case UnitWord::drachm:
        case UnitWord::fluid_drachm:
            return us ? Unit::fluid_drachm_us : Unit::fluid_drachm_uk;
        case UnitWord::minim:
            return us ? Unit::minim_us : Unit::minim_uk;
        case UnitWord::pint:
            return us ? Unit::pint_us : Unit::pint_uk;
        case UnitWord::quart:
            return us ? Unit::quart_us : Unit::quart_uk;
        case UnitWord::gallon:
            return us ? Unit::gallon_us : Unit::gallon_uk;
        default:
            return Unit::none;
    }
}

Unit solid_unit(UnitWord word, Ounce ounce, bool gr_is_gram) {
    const bool apothecaries = ounce == Ounce::apothecaries;
    switch (word) {
        case UnitWord::ounce:
            return apothecaries ? Unit::ounce_ap : Unit::ounce_av;
        case UnitWord::pound:
            return apothecaries ? Unit::pound_ap : Unit::pound_av;
        case UnitWord::drachm:
            return Unit::drachm_ap;
        case UnitWord::scruple:
            return Unit::scruple;
        case UnitWord::grain:
            return Unit::grain;
        case UnitWord::grain_or_gram:
            return gr_is_gram ? Unit::gram : Unit::grain;
        default:
            return Unit::none;
    }
}

Unit metric_unit(UnitWord word) {
    switch (word) {
        case UnitWord::milligram:
            return Unit::milligram;
        case UnitWord::gram:
            return Unit::gram;
        case UnitWord::kilogram:
            return Unit::kilogram;
        case UnitWord::millilitre:
            return Unit::millilitre;
        case UnitWord::litre:
            return Unit::litre;
        default:
            return Unit::none;
    }
}

Unit unit_of(UnitWord word, const Known& known, const Shared& shared, const Way& way, std::size_t column, bool metric) {
    if (const Unit unit = metric_unit(word); unit != Unit::none) return unit;
    if (word == UnitWord::drop) return Unit::drop;
    if (word == UnitWord::none) {
        if (!metric) return Unit::none;
        return known.liquid ? Unit::millilitre : Unit::gram;
    }
    const bool turned = way.other_ounce;
    const Ounce ounce = (shared.ounce == Ounce::apothecaries) != turned ? Ounce::apothecaries : Ounce::avoirdupois;
    const Unit solid = known.liquid ? Unit::none : solid_unit(word, ounce, shared.gr_is_gram);
    return solid != Unit::none ? solid : fluid_unit(word, shared.fluid[column]);
}

}  // namespace

Amount amount_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way, std::size_t column,
                 bool metric) {
    Amount amount;
    quantity::Exact sum = 0;
    Unit first = Unit::none;
    bool one_unit = true;
    for (const Piece& piece : measure.pieces) {
        const Unit unit = unit_of(piece.unit, known, shared, way, column, metric);
        if (unit == Unit::none || unit == Unit::drop) return {};
        if (first == Unit::none) first = unit;
        one_unit = one_unit && unit == first;
        sum += piece.value * quantity::info(unit).factor;
        amount.by_volume = quantity::info(unit).dimension == quantity::Dimension::volume;
    }
    amount.base = sum.to_double();
    const quantity::Exact in_first = sum / quantity::info(first).factor;
    if (one_unit)
        amount.words = fmt::format("{} {}", quantity::exact_text(in_first), quantity::shown_for(in_first, first));
    else
        amount.words = fmt::format("{} {}", quantity::significant_text(sum, 6), amount.by_volume ? "ml" : "g");
    return amount;
}

}  // namespace scruple::printed
