// SPDX-License-Identifier: MIT
// Actions of grammar/entries.hpp.
#pragma once

#include "actions_named.hpp"

namespace scruple::syntax {

// ---- logs ------------------------------------------------------------------------------------

template <>
struct action<rule::first_date> : keeps_piece<&Pieces::first_date, &Pieces::date> {};

template <>
struct action<rule::stock> {
    static void apply0(Draft& draft) {
        draft.last.of = {draft.last.name, draft.last.form};
        draft.last.first = draft.last.quantity;
    }
};
template <>
struct action<rule::received_from> {
    static void apply0(Draft& draft) { draft.gather().partner = draft.last.name; }
};
template <>
struct action<rule::used_for> {
    static void apply0(Draft& draft) { draft.gather().partner = draft.last.text; }
};
template <>
struct action<rule::price> {
    static void apply0(Draft& draft) { draft.gather().price = draft.add<&Tree::sums>(draft.last.money); }
};

inline LogEntry entry_of_stock(Draft& draft, LogEntry::What what) {
    return {.what = what,
            .date = draft.last.first_date,
            .of = draft.last.of,
            .quantity = draft.add<&Tree::quantities>(draft.last.first),
            .items = {},
            .batch = draft.gathered().batch,
            .in_or_from = draft.gathered().partner,
            .price = draft.gathered().price};
}

template <LogEntry::What What>
struct keeps_stock {
    static void apply0(Draft& draft) { draft.last.entry = entry_of_stock(draft, What); }
};
template <>
struct action<rule::received> : keeps_stock<LogEntry::What::received> {};
template <>
struct action<rule::used> : keeps_stock<LogEntry::What::used> {};
template <>
struct action<rule::discarded_some> : keeps_stock<LogEntry::What::discarded> {};
template <>
struct action<rule::moved> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        using enum LogEntry::What;
        const char first = *in.begin();
        draft.last.entry = entry_of_stock(draft, first == 'm' ? mixed : first == 'r' ? replenished : on_shelf);
    }
};

template <>
struct action<rule::batch_of> {
    static void apply0(Draft& draft) { draft.gather().batch = draft.add<&Tree::dates>(draft.last.date); }
};
template <>
struct action<rule::discarded_all> {
    static void apply0(Draft& draft) {
        draft.last.entry = {.what = LogEntry::What::discarded,
                            .date = draft.last.first_date,
                            .of = {draft.last.name, draft.last.form},
                            .items = {},
                            .batch = draft.gathered().batch,
                            .in_or_from = {}};
    }
};
template <>
struct action<rule::processed> {
    static void apply0(Draft& draft) {
        draft.last.entry = {.what = LogEntry::What::processed,
                            .date = draft.last.first_date,
                            .of = {},
                            .items = draft.gathered().list,
                            .in_or_from = draft.last.name};
    }
};
template <>
struct action<rule::log_entry> : takes_back<rule::log_entry> {
    static void apply0(Draft& draft) { draft.commit(draft.last.entry); }
};

// ---- plans -----------------------------------------------------------------------------------

template <>
struct action<rule::weekday> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        constexpr std::string_view starts = "MoTuWeThFrSaSu";
        draft.gather().weekday = static_cast<std::int8_t>(starts.find(text_of(in).substr(0, 2)) / 2);
    }
};
template <>
struct action<rule::each_day> : keeps_span<&Pieces::keyword> {};

template <>
struct action<rule::plan_entry> : takes_back<rule::plan_entry> {
    static void apply0(Draft& draft) {
        const bool each = draft.gathered().weekday >= 0;
        draft.commit(PlanEntry{each ? draft.last.first_date : draft.last.date, draft.last.date,
                               draft.gathered().weekday, draft.gathered().list, draft.last.name});
    }
};

}  // namespace scruple::syntax
