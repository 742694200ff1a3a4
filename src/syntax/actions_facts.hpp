// SPDX-License-Identifier: MIT
// Actions of grammar/facts.hpp: of recipes, conversions, benches and suppliers.
#pragma once

#include "actions_quantities.hpp"

namespace scruple::syntax {

template <Words::Of Of>
struct commits_words {
    static void apply0(Draft& draft) { draft.commit(Words{Of, draft.last.text}); }
};
template <>
struct action<rule::is_a> : commits_words<Words::Of::is_a> {};
template <>
struct action<rule::strength_is> : commits_words<Words::Of::strength> {};
template <>
struct action<rule::source> : commits_words<Words::Of::source> {};
template <>
struct action<rule::caution> : commits_words<Words::Of::caution> {};
template <>
struct action<rule::note> : commits_words<Words::Of::note> {};
template <>
struct action<rule::assumed> : commits_words<Words::Of::assumed> {};
template <>
struct action<rule::book> : commits_words<Words::Of::book> {};

// ---- keeping and capacity --------------------------------------------------------------------

template <>
struct action<rule::kept_how> {
    static void apply0(Draft& draft) { draft.gather().when = draft.last.text.span; }
};
template <>
struct action<rule::keeping> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::keepings>(draft.gather().list, Keeping{draft.last.range, draft.gathered().when});
        draft.gather().when = {};
    }
};
template <>
struct action<rule::keeps> {
    static void apply0(Draft& draft) { draft.commit(Keeps{draft.gathered().list, draft.gathered().source}); }
};

template <>
struct action<rule::use_within> {
    static void apply0(Draft& draft) { draft.commit(UseWithin{draft.add<&Tree::quantities>(draft.last.quantity)}); }
};

template <auto Slot, auto From>
struct keeps_piece {
    static void apply0(Draft& draft) { draft.last.*Slot = draft.last.*From; }
};
template <>
struct action<rule::volume> : keeps_piece<&Pieces::first, &Pieces::quantity> {};
template <>
struct action<rule::volume_of> {
    static void apply0(Draft& draft) { draft.gather().volume_of = draft.last.name; }
};
template <>
struct action<rule::at_least> {
    static void apply0(Draft& draft) { draft.gather().at_least = true; }
};

inline void add_capacity(Draft& draft, const CapacityItem& item) {
    draft.append<&Tree::capacity_items>(draft.gather().list, item);
    draft.gather().at_least = false;
    draft.gather().volume_of = {};
}

inline CapacityItem capacity_item(CapacityItem::What what) {
    CapacityItem item{};
    item.what = what;
    return item;
}

template <CapacityItem::What What>
struct lists_capacity {
    static void apply0(Draft& draft) { add_capacity(draft, capacity_item(What)); }
};
template <>
struct action<rule::one_shot> : lists_capacity<CapacityItem::What::one_shot> {};
template <>
struct action<rule::reused> : lists_capacity<CapacityItem::What::reused> {};
template <>
struct action<rule::items_per> {
    static void apply0(Draft& draft) {
        auto item = capacity_item(CapacityItem::What::items_per);
        item.item = draft.last.item;
        item.per = draft.gathered().per;
        add_capacity(draft, item);
    }
};
template <CapacityItem::What What>
struct lists_quantity_per {
    static void apply0(Draft& draft) {
        auto item = capacity_item(What);
        item.at_least = draft.gathered().at_least;
        item.quantity = draft.add<&Tree::quantities>(draft.last.first);
        item.of = draft.gathered().volume_of;
        item.per = draft.gathered().per;
        add_capacity(draft, item);
    }
};
template <>
struct action<rule::volume_per> : lists_quantity_per<CapacityItem::What::volume_per> {};
template <>
struct action<rule::carried_per> : lists_quantity_per<CapacityItem::What::carried> {};
template <>
struct action<rule::longer_per> : lists_quantity_per<CapacityItem::What::longer> {};
template <>
struct action<rule::capacity_from> {
    static void apply0(Draft& draft) {
        auto item = capacity_item(CapacityItem::What::from);
        item.source = draft.last.text;
        add_capacity(draft, item);
    }
};
template <>
struct action<rule::capacity> {
    static void apply0(Draft& draft) { draft.commit(Capacity{draft.gathered().list}); }
};

// ---- variants, dilutions, replenishment ------------------------------------------------------

struct lists_text {
    static void apply0(Draft& draft) { draft.append<&Tree::names>(draft.gather().names, draft.last.text); }
};
template <>
struct action<rule::variant> : lists_text {};
template <>
struct action<rule::listed> : lists_text {};

template <>
struct action<rule::variants> {
    static void apply0(Draft& draft) { draft.commit(Variants{draft.gathered().names}); }
};

template <>
struct action<rule::diluted> {
    static void apply0(Draft& draft) { draft.append<&Tree::names>(draft.gather().names, draft.last.name); }
};
template <>
struct action<rule::colon_ratio> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        draft.gather().colon_ratio = draft.span(in);
    }
};
template <>
struct action<rule::part_count> {
    static void apply0(Draft& draft) { draft.append<&Tree::numbers>(draft.gather().list, draft.last.number); }
};

template <bool Dilute>
struct commits_mix {
    static void apply0(Draft& draft) {
        draft.commit(Mix{Dilute, draft.gathered().names, draft.gathered().list, draft.gathered().colon_ratio});
    }
};
template <>
struct action<rule::dilute> : commits_mix<true> {};
template <>
struct action<rule::mix> : commits_mix<false> {};

template <>
struct action<rule::replenish_per> {
    static void apply0(Draft& draft) { draft.gather().first_per = draft.gathered().per; }
};
template <>
struct action<rule::at_most_volume> {
    static void apply0(Draft& draft) { draft.gather().at_most = draft.add<&Tree::quantities>(draft.last.quantity); }
};
template <>
struct action<rule::replenish> {
    static void apply0(Draft& draft) {
        const bool bounded = draft.gathered().at_most != nowhere;
        draft.commit(Replenish{draft.add<&Tree::quantities>(draft.last.first), draft.gathered().first_per,
                               draft.gathered().at_most, bounded ? draft.gathered().per : Per{}});
    }
};

// ---- expectations ----------------------------------------------------------------------------

template <>
struct action<rule::ph_bound> {
    static void apply0(Draft& draft) { draft.append<&Tree::numbers>(draft.gather().ph_bounds, draft.last.number); }
};
template <>
struct action<rule::expect_ph> {
    static void apply0(Draft& draft) { draft.commit(Expect{true, draft.gathered().ph_bounds, {}, nowhere}); }
};
template <>
struct action<rule::expect_content> {
    static void apply0(Draft& draft) {
        draft.commit(Expect{false, {}, {draft.last.name, draft.last.form}, draft.add<&Tree::ranges>(draft.last.range)});
    }
};

// ---- of a bench and a supplier ---------------------------------------------------------------

template <>
struct action<rule::first_mark> : keeps_piece<&Pieces::first, &Pieces::quantity> {};
template <>
struct action<rule::second_mark> : keeps_piece<&Pieces::second, &Pieces::quantity> {};
template <>
struct action<rule::balance> {
    static void apply0(Draft& draft) {
        const auto division = draft.add<&Tree::quantities>(draft.last.first);
        const auto capacity = draft.add<&Tree::quantities>(draft.last.second);
        draft.commit(Instrument{Instrument::What::balance, division, capacity});
    }
};

template <>
struct action<rule::measure> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        using enum Instrument::What;
        const auto capacity = draft.add<&Tree::quantities>(draft.last.first);
        const auto division = draft.add<&Tree::quantities>(draft.last.second);
        const char first = *in.begin();
        draft.commit(Instrument{first == 'g' ? graduate : first == 's' ? syringe : jug, division, capacity});
    }
};

template <>
struct action<rule::drops> : keeps_count {};
template <>
struct action<rule::liquid> : keeps_span<&Pieces::liquid> {};
template <>
struct action<rule::dropper> {
    static void apply0(Draft& draft) {
        draft.commit(Dropper{draft.last.count, draft.add<&Tree::quantities>(draft.last.quantity), draft.last.liquid});
    }
};

template <>
struct action<rule::bottle_count> {
    static void apply0(Draft& draft) { draft.gather().bottle_count = draft.last.number; }
};
template <>
struct action<rule::bottle> {
    static void apply0(Draft& draft) {
        draft.append<&Tree::bottles>(draft.gather().list, Bottle{draft.gathered().bottle_count, draft.last.quantity});
        draft.gather().bottle_count = {};
    }
};
template <>
struct action<rule::bottles> {
    static void apply0(Draft& draft) { draft.commit(Bottles{draft.gathered().list}); }
};

template <>
struct action<rule::pace_word> {
    template <class Input>
    static void apply(const Input& in, Draft& draft) {
        using enum Pace::Of;
        switch (*in.begin()) {
            case 'w':
                draft.last.pace = weigh;
                break;
            case 's':
                draft.last.pace = stir;
                break;
            case 'f':
                draft.last.pace = filter;
                break;
            case 'b':
                draft.last.pace = bottle;
                break;
            default:
                draft.last.pace = in.begin()[1] == 'e' ? measure : make_up;
        }
    }
};
template <>
struct action<rule::pace> {
    static void apply0(Draft& draft) {
        draft.commit(Pace{draft.last.pace, draft.add<&Tree::quantities>(draft.last.quantity)});
    }
};

template <>
struct action<rule::postage_charge> : keeps_piece<&Pieces::charge, &Pieces::money> {};
template <>
struct action<rule::free_over> {
    static void apply0(Draft& draft) { draft.gather().free_over = draft.add<&Tree::sums>(draft.last.money); }
};
template <>
struct action<rule::postage> {
    static void apply0(Draft& draft) {
        draft.commit(Postage{draft.add<&Tree::sums>(draft.last.charge), draft.gathered().free_over});
    }
};

template <>
struct action<rule::fact> : takes_back<rule::fact> {};

}  // namespace scruple::syntax
