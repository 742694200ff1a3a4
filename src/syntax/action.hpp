// SPDX-License-Identifier: MIT
// What the actions have in common. They are split over several headers by what they read;
// parse.cpp includes them all and is the one place where the grammar is made into code.
#pragma once

#include "draft.hpp"
#include "grammar/file.hpp"

namespace scruple::syntax {

namespace rule = grammar;

template <class Rule>
struct action : tao::pegtl::nothing<Rule> {};

/// An action that takes back what a failed reading of the rule has added to the tree.
template <class Rule>
struct takes_back : tao::pegtl::maybe_nothing {
    template <class, tao::pegtl::apply_mode A, tao::pegtl::rewind_mode M, template <class...> class Action,
              template <class...> class Control, class Input>
    [[nodiscard]] static bool match(Input& in, Draft& draft) {
        const auto mark = draft.mark();
        if (tao::pegtl::match<Rule, A, M, Action, Control>(in, draft)) return true;
        if constexpr (A == tao::pegtl::apply_mode::action) draft.undo(mark);
        return false;
    }
};

}  // namespace scruple::syntax
