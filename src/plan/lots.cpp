// SPDX-License-Identifier: MIT
#include "lots.hpp"

#include <algorithm>
#include <tuple>

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::Model;

namespace {

/// `films 135` of `5 films 135`, and of `1 film 135` too.
std::string_view kind_of(const check::Use& use) {
    const auto blank = use.text.find(' ');
    return use.count.is_zero() || blank == std::string_view::npos ? "" : use.text.substr(blank + 1);
}

bool same_kind(std::string_view a, std::string_view b) {
    const auto after_word = [](std::string_view text) { return text.substr(std::min(text.find(' '), text.size())); };
    return a == b || (!a.empty() && !b.empty() && a.front() == b.front() && after_word(a) == after_word(b));
}

void add(std::vector<Through>& all, const check::Use& use) {
    const auto kind = kind_of(use);
    const Exact count = kind.empty() ? use.area_cm2.value_or(0) : use.count;
    const auto same = std::ranges::find_if(all, [&](const Through& other) { return same_kind(other.what, kind); });
    if (same == all.end())
        all.push_back({kind, count});
    else
        same->count += count;
}

/// Capacity is an estimate, and rounded where a bottle is no longer full, so that the numbers stay short.
Exact in_short(const Exact& ml) {
    return ml.rounded_to({1, 1000});
}

}  // namespace

std::strong_ordering operator<=>(const Stocked& a, const Stocked& b) {
    return std::tie(a.solution, a.ware) <=> std::tie(b.solution, b.ware);
}

std::string stocked_words(const Model& model, const Stocked& what) {
    return what.solution == check::none ? ware_words(model, what.ware) : check::shown_name(model, what.solution);
}

Exact usable(const Lot& lot) {
    if (lot.spent.is_zero()) return lot.left;
    if (lot.left == lot.made) return std::max(lot.left - lot.spent, Exact());
    return std::max(in_short(lot.left * (1 - lot.spent / lot.made)), Exact());
}

void Lots::begin(LineId line) {
    line_ = line;
    pourings_before.resize(line + 1, pourings_so_far());
}

// ---- what comes ----

void Lots::receive(const Stocked& what, const Exact& measure) {
    put(what, measure);
    piles[what].account.received += measure;
}

void Lots::mix(const Stocked& what, const Exact& measure, std::uint32_t first_pouring) {
    Lot& lot = put(what, measure);
    lot.first = first_pouring;
    lot.end = pourings_so_far();
    piles[what].account.mixed += measure;
}

Lot& Lots::put(const Stocked& what, const Exact& measure) {
    Pile& pile = piles[what];
    pile.lots.push_back(static_cast<LotId>(lots.size()));
    pile.held += measure;
    if (what.solution == check::none)
        stock.wares[what.ware] += measure;
    else
        stock.solutions[what.solution] += measure;
    return lots.emplace_back(Lot{.line = line_, .what = what, .made = measure, .left = measure});
}

// ---- what goes ----

Exact Lots::take(const Stocked& what, const Exact& wanted, Exact Account::*to) {
    const auto pile = piles.find(what);
    if (pile == piles.end()) return {};
    Exact taken = std::min(pile->second.held, wanted);
    if (what.solution == check::none) take_own(stock, {what.ware, taken});
    drain(pile->second, taken);
    pile->second.account.*to += taken;
    if (to == &Account::discarded && pile->second.held.is_zero()) pile->second.cleared = pile->second.lots.size();
    return taken;
}

Exact Lots::take_others(const Model& model, const Amount& asked, Exact Account::*to) {
    Exact as_asked;
    if (asked.measure.is_zero()) return as_asked;
    for (const Taking& taking : plan::take_others(model, stock, asked)) {
        Pile& pile = piles[{.ware = taking.from}];
        drain(pile, taking.measure);
        pile.account.*to += taking.measure;
        as_asked += taking.as_asked;
    }
    return as_asked;
}

void Lots::drain(Pile& pile, const Exact& measure) {
    Exact rest = measure;
    while (rest > 0 && pile.oldest < pile.lots.size()) {
        Lot& lot = lots[pile.lots[pile.oldest]];
        const Exact part = std::min(lot.left, rest);
        take_from(pile.lots[pile.oldest], part);
        rest -= part;
        if (lot.left.is_zero()) ++pile.oldest;
    }
    pile.held -= measure - rest;
}

void Lots::take_from(LotId id, const Exact& measure) {
    if (measure.is_zero()) return;
    pour(lots[id], measure);
    pourings.push_back({id, measure});
}

Exact Lots::held_of(const Stocked& what, LineId first_line, LineId end_line) const {
    Exact all;
    const auto pile = piles.find(what);
    if (pile == piles.end()) return all;
    for (const LotId id : pile->second.lots)
        if (lots[id].line >= first_line && lots[id].line < end_line) all += lots[id].left;
    return all;
}

Exact Lots::take_of(const Stocked& what, LineId first_line, LineId end_line, const Exact& wanted, Exact Account::*to) {
    const auto pile = piles.find(what);
    if (pile == piles.end()) return {};
    Exact rest = wanted;
    for (const LotId id : pile->second.lots) {
        Lot& lot = lots[id];
        if (lot.line < first_line || lot.line >= end_line) continue;
        const Exact part = std::min(lot.left, rest);
        take_from(id, part);
        lot.poured_off += part;
        rest -= part;
    }
    Exact taken = wanted - rest;
    if (what.solution == check::none) take_own(stock, {what.ware, taken});
    pile->second.held -= taken;
    pile->second.account.*to += taken;
    return taken;
}

/// What is poured out of a bath in use is as spent as what stays.
void Lots::pour(Lot& lot, const Exact& measure) {
    const Exact before = usable(lot);
    lot.left -= measure;
    add_usable(lot, before);
}

void Lots::add_usable(const Lot& lot, const Exact& before) {
    if (lot.what.solution != check::none) stock.solutions[lot.what.solution] += usable(lot) - before;
}

void Lots::lack(const Stocked& what, const Exact& wanting, Exact Account::*to) {
    if (wanting <= 0) return;
    Pile& pile = piles[what];
    pile.account.wanting += wanting;
    pile.account.*to += wanting;
    for (auto same = shortages.rbegin(); same != shortages.rend() && same->line == line_; ++same)
        if (same->what == what) {
            same->wanting += wanting;
            return;
        }
    pile.unsettled.push_back(static_cast<std::uint32_t>(shortages.size()));
    shortages.push_back({line_, what, wanting});
}

// ---- what was looked up ----

void Lots::count(const Stocked& what, const Exact& counted) {
    Pile& pile = piles[what];
    const bool first = pile.lots.empty() && pile.account.wanting.is_zero();
    const Exact expected = pile.held - pile.account.wanting;
    if (first)
        pile.account.first_count += counted;
    else
        pile.account.corrections += counted - expected;
    if (first || counted != expected) corrections.push_back({line_, what, expected, counted, first});
    for (const auto shortage : pile.unsettled) shortages[shortage].settled = true;
    pile.unsettled.clear();
    pile.account.wanting = 0;
    if (counted > pile.held) {
        const Exact beyond = refill(pile, counted - pile.held);
        if (!beyond.is_zero()) put(what, beyond);
        return;
    }
    const Exact gone = pile.held - counted;
    if (what.solution == check::none) take_own(stock, {what.ware, gone});
    drain(pile, gone);
}

/// More was counted than the log comes to: less was taken of what stands there, or of what stood there last. A jar
/// cannot hold more than what came in it; gives what is beyond.
Exact Lots::refill(Pile& pile, const Exact& more) {
    Exact rest = more;
    if (pile.oldest == pile.lots.size() && pile.cleared < pile.lots.size()) --pile.oldest;
    for (std::size_t i = pile.oldest; i < pile.lots.size() && rest > 0; ++i) {
        Lot& lot = lots[pile.lots[i]];
        const Exact before = usable(lot);
        const Exact part = std::min(lot.made - lot.poured_off - lot.left, rest);
        if (part <= 0) continue;
        lot.left += part;
        rest -= part;
        if (lot.what.solution == check::none)
            stock.wares[lot.what.ware] += part;
        else
            add_usable(lot, before);
    }
    pile.held += more - rest;
    return rest;
}

// ---- what is used and stays ----

void Lots::spend(Id bath, const Exact& ml, const std::vector<check::Use>& uses, const Lengthening& longer) {
    Pile& pile = piles[{.solution = bath}];
    pile.in_use = std::max(pile.in_use, pile.oldest);
    const auto is_last = [&] { return pile.in_use + 1 >= pile.lots.size(); };
    while (!is_last() && usable(lots[pile.lots[pile.in_use]]).is_zero()) ++pile.in_use;
    for (const auto& use : uses) add(lots[pile.lots[pile.in_use]].through, use);
    lots[pile.lots[pile.in_use]].longer += longer;
    Exact rest = ml;
    while (rest > 0) {
        Lot& lot = lots[pile.lots[pile.in_use]];
        const Exact before = usable(lot);
        const Exact part = is_last() ? rest : std::min(rest, before);
        lot.spent += lot.left == lot.made ? part : in_short(part * lot.made / lot.left);
        rest -= part;
        add_usable(lot, before);
        if (rest > 0) ++pile.in_use;
    }
}

void Lots::replenish(Id bath, const Exact& ml) {
    const auto pile = piles.find({.solution = bath});
    if (pile != piles.end() && !pile->second.held.is_zero()) lots[pile->second.lots.back()].replenished += ml;
}

Exact Lots::held(const Stocked& what) const {
    const auto pile = piles.find(what);
    return pile == piles.end() ? Exact() : pile->second.held;
}

bool Lots::lacks(const Stocked& what) const {
    const auto pile = piles.find(what);
    return pile != piles.end() && !pile->second.unsettled.empty();
}

/// All of that form and strength, in whichever unit it is counted.
std::vector<Stocked> Lots::known_of(const check::LogEntry& line) const {
    if (line.solution != check::none) return {{.solution = line.solution}};
    std::vector<Stocked> all;
    for (auto pile = piles.lower_bound({.ware = {line.chemical, 0, {}, false}}); pile != piles.end(); ++pile) {
        const Ware& ware = pile->first.ware;
        if (pile->first.solution != check::none || ware.chemical != line.chemical) break;
        if (ware.strength == line.strength && (line.form == check::none || ware.form == line.form))
            all.push_back(pile->first);
    }
    return all;
}

}  // namespace scruple::plan
