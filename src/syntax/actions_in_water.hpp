// SPDX-License-Identifier: MIT
// Actions of grammar/facts.hpp: what is said of a chemical in water.
#pragma once

#include "actions_chemicals.hpp"

namespace scruple::syntax {

template <>
struct action<rule::pk_value> : keeps_piece<&Pieces::pk, &Pieces::number> {};
template <>
struct action<rule::epsilon> : keeps_piece<&Pieces::epsilon, &Pieces::number> {};
template <>
struct action<rule::first_ion> : keeps_piece<&Pieces::first_ion, &Pieces::formula> {};

template <Index Gathered::*Slot>
struct gathers_number {
    static void apply0(Draft& draft) { draft.gather().*Slot = draft.add<&Tree::numbers>(draft.last.number); }
};
template <>
struct action<rule::enthalpy> : gathers_number<&Gathered::enthalpy> {};
template <>
struct action<rule::heat_capacity> : gathers_number<&Gathered::heat_capacity> {};
template <>
struct action<rule::give_or_take> : gathers_number<&Gathered::give_or_take> {};
template <>
struct action<rule::in_air> : gathers_number<&Gathered::in_air> {};

template <Equilibrium::Of Of>
struct commits_equilibrium {
    static void apply0(Draft& draft) {
        const auto& it = draft.gathered();
        const Span formula = Of == Equilibrium::Of::gas ? draft.last.formula : Span{};
        draft.commit(Equilibrium{Of, it.left_terms, it.list, formula, draft.add<&Tree::numbers>(draft.last.pk),
                                 it.enthalpy, it.heat_capacity, it.give_or_take, it.in_air, it.source});
    }
};
template <>
struct action<rule::in_water> : commits_equilibrium<Equilibrium::Of::equilibrium> {};
template <>
struct action<rule::escapes> : commits_equilibrium<Equilibrium::Of::gas> {};

template <>
struct action<rule::pair> {
    static void apply0(Draft& draft) {
        draft.commit(Interaction{draft.last.first_ion, draft.last.formula, draft.last.epsilon,
                                 draft.gathered().give_or_take, draft.gathered().source});
    }
};

template <>
struct action<rule::bystander_one> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::names>(draft.gather().names, Name{draft.last.formula, false});
    }
};
template <>
struct action<rule::bystander> {
    static void apply0(Draft& draft) { draft.commit(Bystanders{draft.gathered().names, draft.gathered().source}); }
};
template <>
struct action<rule::salt_of> {
    static void apply0(Draft& draft) { draft.commit(SaltOf{draft.last.name}); }
};

}  // namespace scruple::syntax
