// SPDX-License-Identifier: MIT
// Actions of grammar/steps.hpp, and of the details that ingredients share with steps.
#pragma once

#include "actions_meetings.hpp"

namespace scruple::syntax {

// ---- details ---------------------------------------------------------------------------------

template <Detail::What What>
struct keeps_detail {
    static void apply0(Draft& draft) { draft.last.detail = {.what = What, .span = {}, .words = {}, .ph = {}}; }
};

template <Detail::What What>
struct keeps_worded_detail {
    static void apply0(Draft& draft) {
        draft.last.detail = {.what = What, .span = {}, .words = draft.last.text, .ph = {}};
    }
};

template <>
struct action<rule::stirring_every> : keeps_detail<Detail::What::stirring_every> {};
template <>
struct action<rule::stirring> : keeps_detail<Detail::What::stirring> {};
template <>
struct action<rule::slowly> : keeps_detail<Detail::What::slowly> {};
template <>
struct action<rule::not_above> : keeps_detail<Detail::What::not_above> {};
template <>
struct action<rule::until_words> : keeps_worded_detail<Detail::What::until> {};
template <>
struct action<rule::remark> : keeps_worded_detail<Detail::What::remark> {};
template <>
struct action<rule::unknown_detail> : keeps_worded_detail<Detail::What::unknown> {};
template <>
struct action<rule::until_ph> {
    static void apply0(Draft& draft) {
        draft.last.detail = {.what = Detail::What::until, .span = {}, .words = {}, .ph = draft.last.number};
    }
};

template <>
struct action<rule::pinch_now> : keeps_detail<Detail::What::pinch_now> {};
template <>
struct action<rule::some_now> : keeps_detail<Detail::What::quantity_now> {};
template <>
struct action<rule::made_word> : keeps_detail<Detail::What::by_conversion> {};
template <>
struct action<rule::made_from> : keeps_worded_detail<Detail::What::by_conversion> {};
template <>
struct action<rule::optional_word> : keeps_detail<Detail::What::optional> {};
template <>
struct action<rule::reason> : keeps_worded_detail<Detail::What::optional> {};
template <>
struct action<rule::warmth> : keeps_detail<Detail::What::at> {};
template <>
struct action<rule::later_at> : keeps_detail<Detail::What::at> {};
template <>
struct action<rule::odd_warmth> : keeps_worded_detail<Detail::What::unknown> {};

/// The detail is sure now: its quantity or range, the last that was read, goes into the tree with it.
struct lists_detail {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        using enum Detail::What;
        auto& detail = draft.last.detail;
        detail.span = draft.span(in);
        if (detail.what == at) detail.range = draft.add<&Tree::ranges>(draft.last.range);
        if (detail.what == quantity_now || detail.what == not_above || detail.what == stirring_every) {
            detail.quantity = draft.add<&Tree::quantities>(draft.last.quantity);
        }
        draft.append<&Tree::details>(draft.gather().details, detail);
    }
};
template <>
struct action<rule::listed_detail> : lists_detail {};
template <>
struct action<rule::first_detail> : lists_detail {};
template <>
struct action<rule::added_detail> : lists_detail {};
template <>
struct action<rule::amount_at> : lists_detail {};

// ---- steps -----------------------------------------------------------------------------------

inline Step::Verb verb_of(std::string_view word) {
    using enum Step::Verb;
    switch (word[0]) {
        case 's':
            return word == "stir" ? stir : stand;
        case 'w':
            return word == "wait" ? wait : warm;
        case 'f':
            return filter;
        default:
            return cool;
    }
}

struct keeps_verb {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.verb = verb_of(text_of(in));
        draft.last.keyword = draft.span(in);
    }
};
template <>
struct action<rule::pause_verb> : keeps_verb {};
template <>
struct action<rule::temper_verb> : keeps_verb {};

template <>
struct action<rule::toward> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        using enum Step::Toward;
        const char first = *in.begin();
        draft.gather().toward = first == 't' ? to : first == 'b' ? below : above;
    }
};
template <>
struct action<rule::step_range> {
    static void apply0(Draft& draft) { draft.gather().range = draft.add<&Tree::ranges>(draft.last.range); }
};

inline Step step_of(const Draft& draft, Step::Verb verb) {
    return {verb, draft.gathered().toward, draft.gathered().range, {}, draft.gathered().details};
}

struct commits_verb {
    static void apply0(Draft& draft) { draft.commit(step_of(draft, draft.last.verb)); }
};
template <>
struct action<rule::pause> : commits_verb {};
template <>
struct action<rule::temper> : commits_verb {};
template <>
struct action<rule::limit> {
    static void apply0(Draft& draft) { draft.commit(step_of(draft, Step::Verb::not_above)); }
};
template <>
struct action<rule::do_this> {
    static void apply0(Draft& draft) {
        auto step = step_of(draft, Step::Verb::do_this);
        step.words = draft.last.text;
        draft.commit(step);
    }
};

// ---- second vessels --------------------------------------------------------------------------

inline VesselStep::Share share_of(std::string_view word) {
    using enum VesselStep::Share;
    if (word == "half") return half;
    if (word.starts_with('t')) return rest;
    return word.ends_with("third") ? third : quarter;
}

template <>
struct action<rule::share_word> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.share = share_of(text_of(in));
    }
};
template <>
struct action<rule::share_volume> {
    static void apply0(Draft& draft) {
        draft.last.share = VesselStep::Share::quantity;
        draft.last.first = draft.last.quantity;
    }
};
template <>
struct action<rule::share> {
    static void apply0(Draft& draft) { draft.gather().share = draft.last.share; }
};
template <>
struct action<rule::vessel_label> : keeps_piece<&Pieces::vessel, &Pieces::text> {};

template <>
struct action<rule::pour_in> {
    static void apply0(Draft& draft) {
        const auto share = draft.gathered().share;
        const bool measured = share == VesselStep::Share::quantity;
        const auto quantity = measured ? draft.add<&Tree::quantities>(draft.last.first) : nowhere;
        draft.commit(
            VesselStep{VesselStep::What::pour_in, share, quantity, draft.last.vessel, draft.gathered().details});
    }
};

template <VesselStep::What What>
struct commits_vessel {
    static void apply0(Draft& draft) {
        draft.commit(VesselStep{What, VesselStep::Share::all, nowhere, draft.last.text, {}});
    }
};
template <>
struct action<rule::apart> : commits_vessel<VesselStep::What::apart> {};
template <>
struct action<rule::set_aside> : commits_vessel<VesselStep::What::set_aside> {};

template <>
struct action<rule::step> : takes_back<rule::step> {};

}  // namespace scruple::syntax
