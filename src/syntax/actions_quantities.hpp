// SPDX-License-Identifier: MIT
// Actions of grammar/units.hpp and grammar/quantities.hpp.
#pragma once

#include <utility>

#include "actions_words.hpp"
#include "number.hpp"

namespace scruple::syntax {

template <class Input>
std::string_view text_of(const Input& in) {
    return {in.begin(), in.size()};
}

// ---- numbers and units -----------------------------------------------------------------------

template <>
struct action<rule::number> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.number = quick_number(text_of(in), draft.span(in));
        draft.last.unit = {};
    }
};

template <>
struct action<rule::loose_number> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.number = {0, 0, draft.span(in)};
        draft.last.unit = {};
    }
};

template <>
struct action<rule::unit> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::dose_unit> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::time_unit> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::area_unit> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::strength_unit> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::percent_sign> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::odd_strength> : keeps_span<&Pieces::unit> {};
template <>
struct action<rule::loose_unit> : keeps_span<&Pieces::unit> {};

/// A quantity whose text ends with its unit, if it has one.
template <class Input>
Quantity united(const Input& in, const Draft& draft) {
    const auto [number, unit] = std::pair(draft.last.number, draft.last.unit);
    if (unit.empty()) return {number, unit, quantity::Unit::none};
    return {number, unit, quantity::find_unit(text_of(in).substr(in.size() - (unit.end - unit.begin)))};
}

struct keeps_quantity {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        auto& quantity = draft.last.quantity = united(in, draft);
        if (quantity.number.loose()) quantity.unit = quantity::Unit::none;
    }
};
template <>
struct action<rule::quantity_said> : keeps_quantity {};
template <>
struct action<rule::dose> : keeps_quantity {};
template <>
struct action<rule::time> : keeps_quantity {};
template <>
struct action<rule::item_area> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.item = {{}, nowhere, draft.add<&Tree::quantities>(united(in, draft))};
    }
};

// ---- ranges ----------------------------------------------------------------------------------

struct opens_range {
    static void apply0(Draft& draft) { draft.last.range = {draft.last.quantity, draft.last.quantity}; }
};

/// `45 to 50 C`: the first takes the unit of the second where it has none of its own.
struct closes_range {
    static void apply0(Draft& draft) {
        auto& [low, high] = draft.last.range;
        high = draft.last.quantity;
        if (!low.unit_span.empty()) return;
        low.unit = high.unit;
        if (high.unit == quantity::Unit::none) low.unit_span = high.unit_span;
    }
};
template <>
struct action<rule::low> : opens_range {};
template <>
struct action<rule::high> : closes_range {};

// ---- strengths -------------------------------------------------------------------------------

template <>
struct action<rule::strength> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.strength = united(in, draft);
        draft.last.solvent = {};
    }
};

struct keeps_loose_strength {
    static void apply0(Draft& draft) {
        draft.last.strength = {draft.last.number, draft.last.unit, quantity::Unit::none};
        draft.last.solvent = {};
    }
};
template <>
struct action<rule::loose_percent> : keeps_loose_strength {};
template <>
struct action<rule::loose_strength> : keeps_loose_strength {};
template <>
struct action<rule::solvent> : keeps_span<&Pieces::solvent> {};

template <>
struct action<rule::currency> : keeps_span<&Pieces::currency> {};
template <>
struct action<rule::money> {
    static void apply0(Draft& draft) { draft.last.money = {draft.last.number, draft.last.currency}; }
};

// ---- films and sheets ------------------------------------------------------------------------

template <>
struct action<rule::width> {
    static void apply0(Draft& draft) { draft.last.width = draft.last.number; }
};

template <>
struct action<rule::length_unit> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.length_unit = static_cast<std::uint8_t>(*in.begin());
    }
};

template <>
struct action<rule::sheet_size> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.format = {draft.span(in), draft.last.width, draft.last.number, draft.last.length_unit, false};
    }
};

template <>
struct action<rule::format_word> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.format = {draft.span(in), {}, {}, 0, false};
    }
};

template <>
struct action<rule::medium> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.sheet = *in.begin() == 's';
    }
};

template <>
struct action<rule::film_format> {
    static void apply0(Draft& draft) { draft.last.format.sheet = draft.last.sheet; }
};

struct keeps_count {
    static void apply0(Draft& draft) { draft.last.count = draft.last.number; }
};
template <>
struct action<rule::item_count> : keeps_count {};

template <>
struct action<rule::item_films> {
    static void apply0(Draft& draft) {
        draft.last.item = {draft.last.count, draft.add<&Tree::formats>(draft.last.format), nowhere};
    }
};

template <>
struct action<rule::listed_item> {
    static void apply0(Draft& draft) { draft.append<&Tree::items>(draft.gather().list, draft.last.item); }
};

template <>
struct action<rule::per_film> {
    static void apply0(Draft& draft) { draft.gather().per = {draft.add<&Tree::formats>(draft.last.format), nowhere}; }
};
template <>
struct action<rule::per_quantity> {
    static void apply0(Draft& draft) {
        draft.gather().per = {nowhere, draft.add<&Tree::quantities>(draft.last.quantity)};
    }
};

// ---- dates -----------------------------------------------------------------------------------

template <>
struct action<rule::date> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        const char* text = in.begin();
        const auto two = [text](int at) { return (text[at] - '0') * 10 + (text[at + 1] - '0'); };
        draft.last.keyword = draft.span(in);
        draft.last.date = {static_cast<std::int16_t>(two(0) * 100 + two(2)), static_cast<std::uint8_t>(two(5)),
                           static_cast<std::uint8_t>(two(8)), draft.last.keyword};
    }
};

}  // namespace scruple::syntax
