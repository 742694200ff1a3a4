// SPDX-License-Identifier: MIT
#include "reading.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

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

Ounce other(Ounce ounce) {
    return ounce == Ounce::avoirdupois ? Ounce::apothecaries : Ounce::avoirdupois;
}

struct Where {
    const Known& known;
    const Shared& shared;
    const Way& way;
    std::size_t index;
    const Column& column;
};

UnitWord word_of(const Piece& piece, const Column& column) {
    if (piece.unit != UnitWord::none) return piece.unit;
    if (column.unit != UnitWord::none) return column.unit;
    return column.metric || column.parts ? UnitWord::part : UnitWord::none;
}

Unit unit_of(const Piece& piece, const Where& where) {
    const UnitWord word = word_of(piece, where.column);
    if (const Unit unit = metric_unit(word); unit != Unit::none) return unit;
    if (word == UnitWord::drop) return Unit::drop;
    // A part is a gram of what is weighed and a millilitre of what is measured, as figures without a unit are.
    if (word == UnitWord::part) return where.known.liquid ? Unit::millilitre : Unit::gram;
    const Ounce of_page = where.way.other_ounce ? other(where.shared.ounce) : where.shared.ounce;
    const Ounce ounce = piece.whose.ounce.value_or(where.known.ounce.value_or(of_page));
    const Unit solid = where.known.liquid ? Unit::none : solid_unit(word, ounce, where.shared.gr_is_gram);
    return solid != Unit::none ? solid : fluid_unit(word, piece.whose.fluid.value_or(where.shared.fluid[where.index]));
}

}  // namespace

bool is_in(const Measure& measure, UnitWord unit) {
    return std::ranges::any_of(measure.pieces, [unit](const Piece& piece) { return piece.unit == unit; });
}

Amount amount_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way, std::size_t index,
                 const Column& column) {
    Amount amount;
    for (const Piece& piece : measure.pieces) {
        const Unit unit = unit_of(piece, {known, shared, way, index, column});
        if (unit == Unit::none) return {};
        const bool drops = unit == Unit::drop;
        amount.base += piece.value.to_double() * (drops ? 1.0 / drops_in_ml : quantity::info(unit).factor.to_double());
        amount.by_volume = drops || quantity::info(unit).dimension == quantity::Dimension::volume;
    }
    return amount;
}

std::string_view words_of(Percent percent) {
    switch (percent) {
        case Percent::by_volume:
            return "% v/v";
        case Percent::by_weight:
            return "% w/w";
        case Percent::weight_in_volume:
            return "% w/v";
    }
    return "";
}

Exact ml_of(UnitWord word, Fluid fluid) {
    Unit unit = metric_unit(word);
    if (unit == Unit::none) unit = fluid_unit(word, fluid);
    const bool volume = unit != Unit::none && quantity::info(unit).dimension == quantity::Dimension::volume;
    return volume ? quantity::info(unit).factor : Exact(0);
}

double volume_of(const Piece& piece, const Shared& shared, std::size_t index) {
    const Exact ml = ml_of(piece.unit, piece.whose.fluid.value_or(shared.fluid[index]));
    return ml > 0 ? ml.to_double() : std::numeric_limits<double>::infinity();
}

std::string words_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way,
                     std::size_t index, const Column& column) {
    const Amount amount = amount_of(measure, known, shared, way, index, column);
    if (amount.base <= 0) return {};
    quantity::Exact in_first = 0;
    Unit first = Unit::none;
    for (const Piece& piece : measure.pieces) {
        const Unit unit = unit_of(piece, {known, shared, way, index, column});
        if (unit == Unit::drop || (first != Unit::none && unit != first))
            return fmt::format("{} {}", quantity::significant_text(amount.base, 5), amount.by_volume ? "ml" : "g");
        first = unit;
        in_first += piece.value;
    }
    return fmt::format("{} {}", quantity::exact_text(in_first), quantity::shown_for(in_first, first));
}

}  // namespace scruple::printed
