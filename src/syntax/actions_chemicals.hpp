// SPDX-License-Identifier: MIT
// Actions of grammar/facts.hpp: what is said of chemicals and conversions.
#pragma once

#include <charconv>
#include <utility>

#include "actions_facts.hpp"

namespace scruple::syntax {

template <>
struct action<rule::source_from> {
    static void apply0(Draft& draft) { draft.gather().source = draft.last.text; }
};
template <>
struct action<rule::fact_at> {
    static void apply0(Draft& draft) { draft.gather().at = draft.add<&Tree::ranges>(draft.last.range); }
};

template <>
struct action<rule::other_name> {
    static void apply0(Draft& draft) { draft.append<&Tree::substances>(draft.gather().list, draft.last.substance); }
};
template <>
struct action<rule::also> {
    static void apply0(Draft& draft) { draft.commit(Also{draft.gathered().list}); }
};

// ---- forms -----------------------------------------------------------------------------------

template <>
struct action<rule::formula> : keeps_span<&Pieces::formula> {};
template <>
struct action<rule::form_name> : keeps_piece<&Pieces::form_name, &Pieces::name> {};
template <>
struct action<rule::form_also> : lists_text {};
template <>
struct action<rule::form_sold_at> {
    static void apply0(Draft& draft) { draft.gather().strength = draft.add<&Tree::quantities>(draft.last.strength); }
};
template <>
struct action<rule::form> {
    static void apply0(Draft& draft) {
        draft.commit(Form{draft.last.form_name, draft.last.formula, draft.gathered().names, draft.gathered().strength});
    }
};

// ---- lists of words --------------------------------------------------------------------------

template <WordList::Of Of>
struct commits_list {
    static void apply0(Draft& draft) { draft.commit(WordList{Of, draft.gathered().names, draft.gathered().source}); }
};
template <>
struct action<rule::grade> : commits_list<WordList::Of::grade> {};
template <>
struct action<rule::acts_as> : commits_list<WordList::Of::acts_as> {};
template <>
struct action<rule::hazard> : commits_list<WordList::Of::hazard> {};
template <>
struct action<rule::hazard_code> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.append<&Tree::names>(draft.gather().names, Name{draft.span(in), false});
    }
};

// ---- ions and reactions ----------------------------------------------------------------------

/// 0 where it is more than fits, which balances nothing.
template <>
struct action<rule::coefficient> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.gather().coefficient = 0;
        (void)std::from_chars(in.begin(), in.end(), draft.gather().coefficient);
    }
};

template <>
struct action<rule::ion> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::ions>(draft.gather().list, Ion{draft.gathered().coefficient, draft.last.formula});
        draft.gather().coefficient = 1;
    }
};
template <>
struct action<rule::ions> {
    static void apply0(Draft& draft) { draft.commit(Ions{draft.gathered().list}); }
};

template <>
struct action<rule::term> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::terms>(draft.gather().list, Term{draft.gathered().coefficient, draft.last.substance});
        draft.gather().coefficient = 1;
    }
};
template <>
struct action<rule::reacts_to> {
    static void apply0(Draft& draft) { draft.gather().left_terms = std::exchange(draft.gather().list, {}); }
};
template <>
struct action<rule::reaction> {
    static void apply0(Draft& draft) { draft.commit(Reaction{draft.gathered().left_terms, draft.gathered().list}); }
};

template <>
struct action<rule::excess> {
    static void apply0(Draft& draft) { draft.commit(Excess{draft.last.substance, draft.last.number}); }
};
template <>
struct action<rule::vessel> {
    static void apply0(Draft& draft) { draft.commit(Vessel{draft.last.number}); }
};

// ---- properties ------------------------------------------------------------------------------

template <>
struct action<rule::dissolved_in> : keeps_piece<&Pieces::second, &Pieces::quantity> {};
template <>
struct action<rule::dissolves> {
    static void apply0(Draft& draft) {
        const auto quantity = draft.add<&Tree::quantities>(draft.last.first);
        const auto in = draft.add<&Tree::quantities>(draft.last.second);
        draft.commit(
            Dissolves{quantity, draft.last.form, in, draft.last.liquid, draft.gathered().at, draft.gathered().source});
    }
};

template <>
struct action<rule::property_value> : keeps_piece<&Pieces::value, &Pieces::range> {};

template <Property::Of Of>
struct commits_property {
    static void apply0(Draft& draft) {
        const auto value = draft.add<&Tree::ranges>(draft.last.value);
        draft.commit(
            Property{Of, value, draft.gathered().per, draft.last.form, draft.gathered().at, draft.gathered().source});
    }
};
template <>
struct action<rule::density> : commits_property<Property::Of::density> {};
template <>
struct action<rule::takes_up> : commits_property<Property::Of::takes_up> {};

template <>
struct action<rule::cas_number> : keeps_text {};
template <>
struct action<rule::cas> {
    static void apply0(Draft& draft) { draft.commit(Cas{draft.last.text.span}); }
};

template <>
struct action<rule::area> {
    static void apply0(Draft& draft) {
        draft.commit(Area{draft.add<&Tree::quantities>(draft.last.quantity), draft.gathered().source});
    }
};

}  // namespace scruple::syntax
