// SPDX-License-Identifier: MIT
// Actions of grammar/ingredients.hpp.
#pragma once

#include "actions_steps.hpp"

namespace scruple::syntax {

// ---- amounts ---------------------------------------------------------------------------------

template <>
struct action<rule::dose_low> : opens_range {};
template <>
struct action<rule::dose_high> : closes_range {};
template <>
struct action<rule::time_low> : opens_range {};
template <>
struct action<rule::time_high> : closes_range {};
template <>
struct action<rule::bare_low> {
    static void apply0(Draft& draft) { draft.last.range.low = {draft.last.number, {}, quantity::Unit::none}; }
};

inline void list_amount(Draft& draft, Ingredient::How how) {
    draft.last.how = how;
    draft.append<&Tree::ranges>(draft.gather().ranges, draft.last.range);
}

template <Ingredient::How How>
struct lists_amount {
    static void apply0(Draft& draft) { list_amount(draft, How); }
};
template <>
struct action<rule::to_make> : lists_amount<Ingredient::How::to_make> {};
template <>
struct action<rule::loose_to_make> : lists_amount<Ingredient::How::to_make> {};
template <>
struct action<rule::about> : lists_amount<Ingredient::How::about> {};
template <>
struct action<rule::loose_about> : lists_amount<Ingredient::How::about> {};
template <>
struct action<rule::loose_range> : lists_amount<Ingredient::How::exactly> {};
template <>
struct action<rule::the_rest> {
    static void apply0(Draft& draft) { draft.last.how = Ingredient::How::the_rest; }
};

template <>
struct action<rule::question> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.number = {0, 0, draft.span(in)};
        draft.last.unit = {};
    }
};
struct lists_unknown {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        const auto quantity = united(in, draft);
        draft.last.range = {quantity, quantity};
        list_amount(draft, Ingredient::How::unknown);
    }
};
template <>
struct action<rule::unknown_amount> : lists_unknown {};
template <>
struct action<rule::loose_unknown> : lists_unknown {};

struct lists_share {
    static void apply0(Draft& draft) {
        list_amount(draft, Ingredient::How::shares);
        draft.append<&Tree::names>(draft.gather().names, draft.last.text);
    }
};
template <>
struct action<rule::divided_first> : lists_share {};
template <>
struct action<rule::divided> : lists_share {};
template <>
struct action<rule::loose_divided> : lists_share {};
template <>
struct action<rule::loose_shares> : takes_back<rule::loose_shares> {};
template <>
struct action<rule::counted> {
    static void apply0(Draft& draft) {
        if (draft.gathered().ranges.count == 0) list_amount(draft, Ingredient::How::exactly);
    }
};

/// The name and its form are whole; what follows may hold names of its own.
struct keeps_what_is_named {
    static void apply0(Draft& draft) { draft.last.of = {draft.last.name, draft.last.form}; }
};
template <>
struct action<rule::amount> : keeps_what_is_named {};
template <>
struct action<rule::loose_amount> : keeps_what_is_named {};
template <>
struct action<rule::time_range> {
    static void apply0(Draft& draft) {
        keeps_what_is_named::apply0(draft);
        draft.last.value = draft.last.range;
    }
};
template <>
struct action<rule::pack> {
    static void apply0(Draft& draft) {
        keeps_what_is_named::apply0(draft);
        draft.last.first = draft.last.quantity;
    }
};

// ---- named lines -----------------------------------------------------------------------------

template <>
struct action<rule::reagent_quantity> : keeps_piece<&Pieces::second, &Pieces::quantity> {};
template <>
struct action<rule::per_reagent> {
    static void apply0(Draft& draft) {
        draft.gather().per_quantity = draft.add<&Tree::quantities>(draft.last.second);
        draft.gather().per_substance = draft.last.substance;
    }
};

template <class Rule>
struct commits_ingredient : takes_back<Rule> {
    static void apply0(Draft& draft) {
        const auto& all = draft.gathered();
        draft.commit(Ingredient{draft.last.how, draft.last.of, all.ranges, all.names, all.details, all.per_quantity,
                                all.per_substance});
    }
};
template <>
struct action<rule::ingredient> : commits_ingredient<rule::ingredient> {};
template <>
struct action<rule::loose_ingredient> : commits_ingredient<rule::loose_ingredient> {};

template <>
struct action<rule::process_at> {
    static void apply0(Draft& draft) { draft.gather().at = draft.add<&Tree::ranges>(draft.last.range); }
};
template <>
struct action<rule::process_entry> : takes_back<rule::process_entry> {
    static void apply0(Draft& draft) {
        const auto time = draft.add<&Tree::ranges>(draft.last.value);
        draft.commit(ProcessEntry{draft.last.of, time, draft.gathered().at, draft.gathered().names});
    }
};
template <>
struct action<rule::price_entry> : takes_back<rule::price_entry> {
    static void apply0(Draft& draft) {
        const auto pack = draft.add<&Tree::quantities>(draft.last.first);
        draft.commit(PriceEntry{draft.last.of, pack, draft.add<&Tree::sums>(draft.last.money)});
    }
};

template <>
struct action<rule::named> : takes_back<rule::named> {};
template <>
struct action<rule::loosely_named> : takes_back<rule::loosely_named> {};

}  // namespace scruple::syntax
