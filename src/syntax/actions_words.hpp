// SPDX-License-Identifier: MIT
// Actions of grammar/words.hpp and grammar/headings.hpp.
#pragma once

#include "action.hpp"

namespace scruple::syntax {

/// Keeps the place of a piece in one of the draft's slots.
template <auto Slot>
struct keeps_span {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.*Slot = draft.span(in);
    }
};

struct keeps_text {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.text = {draft.span(in), false};
    }
};

// ---- names -----------------------------------------------------------------------------------

template <>
struct action<rule::inside_quotes> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.text = {draft.span(in), true};
    }
};

template <>
struct action<rule::quoted_name> {
    static void apply0(Draft& draft) {
        draft.last.name = draft.last.text;
        draft.last.form = nowhere;
    }
};

template <>
struct action<rule::name_word> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.name.span.end = draft.span(in).end;
    }
};

template <>
struct action<rule::first_word> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.name = {draft.span(in), false};
        draft.last.form = nowhere;
    }
};

template <>
struct action<rule::lone_word> : keeps_text {};
template <>
struct action<rule::words> : keeps_text {};
template <>
struct action<rule::line_text> : keeps_text {};

// ---- forms -----------------------------------------------------------------------------------

template <>
struct action<rule::form_open> {
    static void apply0(Draft& draft) { draft.last.given = {}; }
};

template <>
struct action<rule::form_named> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.append<&Tree::names>(draft.last.given.words, Name{draft.span(in), false});
    }
};

template <>
struct action<rule::saturated_word> {
    static void apply0(Draft& draft) { draft.last.saturated_at = false; }
};

template <>
struct action<rule::saturated_at> {
    static void apply0(Draft& draft) { draft.last.saturated_at = true; }
};

template <>
struct action<rule::saturated> {
    static void apply0(Draft& draft) {
        draft.last.given.saturated = true;
        if (draft.last.saturated_at) draft.last.given.saturated_at = draft.add<&Tree::ranges>(draft.last.range);
    }
};

struct keeps_strength_of_form {
    static void apply0(Draft& draft) {
        draft.last.given.strength = draft.add<&Tree::quantities>(draft.last.strength);
        draft.last.given.solvent = draft.last.solvent;
    }
};
template <>
struct action<rule::form_strength> : keeps_strength_of_form {};
template <>
struct action<rule::form_loose> : keeps_strength_of_form {};

template <>
struct action<rule::form_given> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.given.span = draft.span(in);
        draft.last.form = draft.add<&Tree::forms>(draft.last.given);
    }
};

template <>
struct action<rule::substance> {
    static void apply0(Draft& draft) { draft.last.substance = {draft.last.name, draft.last.form}; }
};

// ---- headings --------------------------------------------------------------------------------

inline Block block_of(std::string_view word) {
    switch (word[0]) {
        case 'r':
            return word == "recipe" ? Block::recipe : Block::replenisher;
        case 'p':
            if (word == "printed") return Block::printed;
            return word == "part" ? Block::part : word == "plan" ? Block::plan : Block::process;
        case 'b':
            return word == "bath" ? Block::bath : Block::bench;
        case 'c':
            return word == "chemical" ? Block::chemical : Block::conversion;
        case 'w':
            return Block::working;
        case 's':
            return Block::supplier;
        case 'l':
            return Block::log;
        case 'm':
            return Block::meeting;
        default:
            return Block::format;
    }
}

struct keeps_block {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.last.block = block_of({in.begin(), in.size()});
        draft.last.text = {};
    }
};
template <>
struct action<rule::title_word> : keeps_block {};
template <>
struct action<rule::label_word> : keeps_block {};
template <>
struct action<rule::untitled_word> : keeps_block {};
template <>
struct action<rule::conversion_word> : keeps_block {};

template <>
struct action<rule::titled> {
    static void apply0(Draft& draft) { draft.commit(Heading{draft.last.block, false, {draft.last.name}, {}}); }
};
template <>
struct action<rule::labelled> {
    static void apply0(Draft& draft) { draft.commit(Heading{draft.last.block, false, {draft.last.text}, {}}); }
};
template <>
struct action<rule::untitled> {
    static void apply0(Draft& draft) { draft.commit(Heading{draft.last.block, false, {}, {}}); }
};
template <>
struct action<rule::conversion_of> {
    static void apply0(Draft& draft) { draft.commit(Heading{draft.last.block, false, draft.last.substance, {}}); }
};

template <>
struct action<rule::sized_word> : keeps_block {};
template <>
struct action<rule::size> : keeps_span<&Pieces::size> {};
template <>
struct action<rule::sized_title> : takes_back<rule::sized_title> {
    static void apply0(Draft& draft) { draft.commit(Heading{Block::recipe, true, {draft.last.name}, draft.last.size}); }
};

struct commits_bad_heading {
    static void apply0(Draft& draft) { draft.commit(Heading{draft.last.block, true, {draft.last.text}, {}}); }
};
template <>
struct action<rule::bad_title> : commits_bad_heading {};
template <>
struct action<rule::bad_label> : commits_bad_heading {};

template <>
struct action<rule::heading> : takes_back<rule::heading> {};

}  // namespace scruple::syntax
