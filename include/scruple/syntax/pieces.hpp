// SPDX-License-Identifier: MIT
// What statements are made of: numbers, quantities, names, days, as they are written.
#pragma once

#include <cstdint>

#include "scruple/quantity/unit.hpp"
#include "scruple/text/source.hpp"

namespace scruple::syntax {

using text::Span;

/// A run of elements in one of the tree's arrays.
struct Slice {
    std::uint32_t first = 0;
    std::uint32_t count = 0;
};

/// `0.7`, `1 1/2`, `½`: exact. A loose number (`0,7`, `1:9`, 40 digits) has denominator 0 and only its span.
struct Number {
    std::int64_t numerator = 0;
    std::uint32_t denominator = 0;
    Span span;
    [[nodiscard]] bool loose() const { return denominator == 0; }
    [[nodiscard]] quantity::Exact value() const { return {numerator, static_cast<std::int64_t>(denominator)}; }
};

/// `700 ml`. A loose quantity has Unit::none, and `unit_span` is what stands where the unit belongs (empty: nothing).
struct Quantity {
    [[no_unique_address]] Number number;  // what follows may stand in its padding: 32 bytes instead of 40
    Span unit_span;
    quantity::Unit unit = quantity::Unit::none;
    [[nodiscard]] bool loose() const { return number.loose() || unit == quantity::Unit::none; }
    [[nodiscard]] Span span() const { return {number.span.begin, unit_span.empty() ? number.span.end : unit_span.end}; }
};

/// `45 to 50 C`, or one quantity twice. A first one without a unit of its own has the second's, and no
/// `unit_span`, so that its span is its number; where that unit is loose it has that `unit_span` too.
struct Range {
    Quantity low;
    Quantity high;
};

using Index = std::uint32_t;
inline constexpr Index nowhere = 0xFFFFFFFF;

/// A name as written: a bare one, or the inside of the quotes of a quoted one.
struct Name {
    Span span;
    bool quoted = false;
};

/// `(anhydrous, 20 % w/v in propylene glycol)`, `(saturated at 20 C)`
struct FormGiven {
    Span span;                 ///< with its parentheses
    Slice words;               ///< of names: `anhydrous`, `distilled`
    Index strength = nowhere;  ///< of quantities: `20 % w/v`; loose for a bare `%`
    Span solvent;              ///< `propylene glycol`; empty for water
    bool saturated = false;
    Index saturated_at = nowhere;  ///< of ranges
};

/// A chemical, a part, another recipe: a name and perhaps a form.
struct Substance {
    Name name;
    Index form = nowhere;  ///< of forms
};

/// `film 135`, `sheet 8x10 in`: what is counted.
struct FilmFormat {
    Span span;                     ///< `135`, `8x10 in`
    Number width, height;          ///< of a sheet with a stated size; loose otherwise
    std::uint8_t length_unit = 0;  ///< 0 none, 'i' in, 'c' cm, 'm' mm
    bool sheet = false;
};

/// `6 films 135`, `24 sheets 8x10 in`, `0.5 m2`
struct Item {
    Number count;            ///< of films or sheets
    Index format = nowhere;  ///< of formats; nowhere for an area
    Index area = nowhere;    ///< of quantities
};

/// `per film 135`, `per 1 l`
struct Per {
    Index format = nowhere;
    Index quantity = nowhere;
};

struct Money {
    Number value;
    Span currency;
};

/// `2026-12-03`; year 0 never stands for a date. Whether the day exists is for the checker.
struct Date {
    std::int16_t year = 0;
    std::uint8_t month = 0, day = 0;
    Span span;
};

}  // namespace scruple::syntax
