// SPDX-License-Identifier: MIT
// Actions of grammar/facts.hpp: what must not meet and who lets it, and printed pages.
#pragma once

#include "actions_in_water.hpp"

namespace scruple::syntax {

template <>
struct action<rule::met_role> {
    static void apply0(Draft& draft) { draft.append<&Tree::met>(draft.gather().list, Met{true, {draft.last.text}}); }
};
template <>
struct action<rule::met_substance> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::met>(draft.gather().list, Met{false, draft.last.substance});
    }
};
template <>
struct action<rule::met_least> {
    static void apply0(Draft& draft) { draft.gather().met_least = draft.add<&Tree::quantities>(draft.last.quantity); }
};

template <Meets::Of Of>
struct commits_meets {
    static void apply0(Draft& draft) { draft.commit(Meets{Of, draft.gathered().list, draft.gathered().met_least}); }
};
template <>
struct action<rule::one_of_these> : commits_meets<Meets::Of::one_of> {};
template <>
struct action<rule::in_doubt> : commits_meets<Meets::Of::in_doubt> {};

template <>
struct action<rule::ph_limit> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.commit(PhLimit{*in.begin() == 'a', draft.last.number});
    }
};
template <>
struct action<rule::warmer_than> {
    static void apply0(Draft& draft) { draft.commit(WarmerThan{draft.add<&Tree::quantities>(draft.last.quantity)}); }
};

template <>
struct action<rule::lethal> : commits_words<Words::Of::lethal> {};
template <>
struct action<rule::harmful> : commits_words<Words::Of::harmful> {};

template <>
struct action<rule::because> {
    static void apply0(Draft& draft) { draft.gather().because = draft.last.text; }
};
template <>
struct action<rule::accept> {
    static void apply0(Draft& draft) { draft.commit(Accept{draft.last.name, draft.gathered().because}); }
};

// ---- of a printed page -----------------------------------------------------------------------

template <>
struct action<rule::reading_said> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.gather().said = {draft.span(in), false};
    }
};
template <>
struct action<rule::reading> {
    static void apply0(Draft& draft) { draft.commit(Reading{draft.gathered().said, draft.gathered().because}); }
};
template <>
struct action<rule::printed_text> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.text = {draft.span(in), false};
    }
};
template <>
struct action<rule::printed_line> : commits_words<Words::Of::printed_line> {};

}  // namespace scruple::syntax
