// SPDX-License-Identifier: MIT
#include "gather.hpp"

#include <algorithm>

#include "ingredients.hpp"
#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;

bool by_weight(const Figure& figure) {
    return figure.unit == "g" || figure.unit == "kg";
}

bool in_drops(const Figure& figure) {
    return figure.unit == "drops" || figure.unit == "drop";
}

bool same_kind(const Figure& a, const Figure& b) {
    return by_weight(a) == by_weight(b) && in_drops(a) == in_drops(b);
}

Exact in_base(const Exact& value, const std::string& unit) {
    return unit == "kg" || unit == "l" ? value * 1000 : value;
}

Figure sum_of(const Figure& a, const Figure& b) {
    if (in_drops(a)) return plain(a.value + b.value, "drops", 15);
    const Exact printed = in_base(a.value, a.unit) + in_base(b.value, b.unit);
    const Exact exact = in_base(a.exact, a.unit) + in_base(b.exact, b.unit);
    return by_weight(a) ? grams_as_read(printed, exact) : ml_as_read(printed, exact);
}

}  // namespace

bool same_thing(const Addition& a, const Addition& b) {
    return a.chemical == b.chemical && a.solution == b.solution && a.form == b.form && a.strength == b.strength &&
           a.solvent == b.solvent && a.grade == b.grade && a.saturated_at.has_value() == b.saturated_at.has_value() &&
           a.optional == b.optional;
}

std::string gathered_name(const check::Model& model, const Addition& addition) {
    return addition.chemical == check::none ? check::shown_name(model, addition.solution)
                                            : std::string(model.chemicals[addition.chemical].name);
}

GatherList::Entry& GatherList::entry_for(const Addition& addition, const Figure& figure) {
    for (Entry& entry : entries_)
        if (same_thing(*entry.addition, addition) && same_kind(entry.row.amount, figure)) return entry;
    const bool solution = addition.chemical == check::none;
    Gathered row{gathered_name(model_, addition), form_words(model_, addition), {}, 0, solution, addition.optional, {}};
    entries_.push_back({&addition, std::move(row), {}});
    if (!addition.grade.empty()) say_once(entries_.back().notes, std::string(addition.grade));
    return entries_.back();
}

void GatherList::add(const Addition& addition, const Figure& figure, double mol, const std::string& note) {
    Entry& entry = entry_for(addition, figure);
    entry.row.amount = entry.row.amount.text.empty() ? figure : sum_of(entry.row.amount, figure);
    entry.row.mol += mol;
    if (!note.empty()) say_once(entry.notes, note);
}

void GatherList::add_about(const Addition& addition, const Exact& ml) {
    if (ml <= 0) return;
    const Exact whole = ml.ceil();
    add(addition, plain_ml(whole), check::dose_of(model_, addition, whole).mol,
        "about: some of it to make up the volume");
}

std::vector<Gathered> GatherList::take() {
    std::vector<Gathered> rows;
    for (Entry& entry : entries_) {
        entry.row.note = joined(entry.notes, "; ");
        rows.push_back(std::move(entry.row));
    }
    return rows;
}

}  // namespace scruple::plan
