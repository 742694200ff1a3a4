// SPDX-License-Identifier: MIT
// Actions of grammar/file.hpp.
#pragma once

#include "actions_entries.hpp"

namespace scruple::syntax {

template <>
struct action<rule::fact_word> : keeps_span<&Pieces::keyword> {};
template <>
struct action<rule::limit_word> : keeps_span<&Pieces::keyword> {};
template <>
struct action<rule::vessel_word> : keeps_span<&Pieces::keyword> {};

struct commits_keyword {
    static void apply0(Draft& draft) { draft.commit(Unread{draft.last.keyword}); }
};
template <>
struct action<rule::bad_figure> : commits_keyword {};
template <>
struct action<rule::bad_keyword> : commits_keyword {};

struct commits_unread {
    static void apply0(Draft& draft) { draft.commit(Unread{}); }
};
template <>
struct action<rule::unread> : commits_unread {};
template <>
struct action<rule::overlong> : commits_unread {};

template <>
struct action<rule::bare> : takes_back<rule::bare> {
    static void apply0(Draft& draft) { draft.commit(Bare{draft.last.substance}); }
};

template <>
struct action<rule::statement> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.place_statement(draft.span(in));
    }
};
template <>
struct action<rule::comment> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.place_comment(draft.span(in));
    }
};
template <>
struct action<rule::line> {
    static void apply0(Draft& draft) { draft.end_line(); }
};

}  // namespace scruple::syntax
