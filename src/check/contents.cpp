// SPDX-License-Identifier: MIT
// What a finished solution holds, through everything it is made of.
#include "scruple/check/contents.hpp"

#include <algorithm>
#include <cmath>

#include "contents_table.hpp"
#include "give_or_take.hpp"
#include "ingredients_of.hpp"
#include "leftovers.hpp"

namespace scruple::check {
namespace {

void add_to(std::vector<Content>& contents, const Content& more, double share) {
    const auto same = [&](const Content& content) {
        return content.chemical == more.chemical && content.form == more.form;
    };
    auto found = std::ranges::find_if(contents, same);
    if (found == contents.end()) found = contents.insert(contents.end(), {more.chemical, more.form});
    found->give_or_take =
        give_or_take_of_sum(found->mol_per_l, found->give_or_take, more.mol_per_l * share, more.give_or_take);
    found->g_per_l += more.g_per_l * share;
    found->mol_per_l += more.mol_per_l * share;
}

}  // namespace

const ContentsTable::Known& ContentsTable::of(Id section) {
    if (const auto found = done_.find(section); found != done_.end()) return found->second;
    const auto done = [this](Id id) { return done_.contains(id); };
    for (const Id id : made_of(model_, section, done)) done_.emplace(id, work_out(model_.sections[id], 1));
    return done_.at(section);
}

ContentsTable::Known ContentsTable::of(Id section, const Exact& batch) {
    const Known& as_written = of(section);
    return batch == 1 ? as_written : work_out(model_.sections[section], batch);
}

ContentsTable::Known ContentsTable::work_out(const Section& section, const Exact& batch) {
    Known known{{}, !section.broken};
    const auto variant = variant_of(section);
    const Exact made = made_ml(model_, section, variant);
    if (made <= 0) return known;
    const double ml = made.to_double();
    known.contents.reserve(section.lines.size());
    for (std::size_t i = 0; i < section.lines.size(); ++i) {
        const auto* addition = std::get_if<Addition>(&section.lines[i]);
        if (addition == nullptr || addition->chemical == model_.water) continue;
        add(known, *addition, {measure(section, i, variant), batch}, 1 / ml);
    }
    const double of_mark = give_or_take_of_measuring(model_, false, made * batch);
    for (auto& content : known.contents) content.give_or_take = std::hypot(content.give_or_take, of_mark);
    return known;
}

/// Another recipe's variants are not this one's; where the number does not fit, its first is meant.
std::size_t ContentsTable::variant_of(const Section& section) const {
    return variant_ < variants_of(model_, section) ? variant_ : 0;
}

/// How much of an addition the finished solution holds; a make-up is what was still wanting.
Exact ContentsTable::measure(const Section& section, std::size_t line, std::size_t variant) const {
    const auto& addition = std::get<Addition>(section.lines[line]);
    if (addition.optional || addition.shares.empty()) return 0;
    switch (addition.how) {
        case Addition::How::unknown:
        case Addition::How::the_rest:
            return 0;
        case Addition::How::to_make: {
            const auto filling = fill(model_, section, variant);
            if (line != filling.made_up_at) return 0;
            const Exact before = line == 0 ? Exact(0) : filling.after[line - 1].with_room_ml;
            return filling.made_ml > before ? filling.made_ml - before : Exact(0);
        }
        case Addition::How::exactly:
        case Addition::How::part_now:
        case Addition::How::about:
            break;
    }
    return addition.shares[addition.shares.size() == 1 ? 0 : variant];
}

void ContentsTable::add(Known& known, const Addition& addition, const Portion& portion, double per_ml) {
    const Exact& measure = portion.measure;
    if (measure.is_zero()) return;
    const double off = give_or_take(model_, addition, measure * portion.batch);
    if (addition.solution == none) {
        const auto dose = dose_of(model_, addition, measure);
        add_to(known.contents, {addition.chemical, addition.form, dose.grams.to_double() * 1000, dose.mol * 1000, off},
               per_ml);
        if (!addition.by_conversion) return;
        for (Content left : leftovers_of(model_, addition, dose.grams)) {
            left.give_or_take *= off;
            add_to(known.contents, left, 1000 * per_ml);
        }
        return;
    }
    const auto part = done_.find(addition.solution);
    known.whole = known.whole && part != done_.end() && part->second.whole;
    if (part == done_.end()) return;
    for (Content content : part->second.contents) {
        content.give_or_take = std::hypot(content.give_or_take, off);
        add_to(known.contents, content, measure.to_double() * per_ml);
    }
}

KnownContents::KnownContents(const Model& model) : model_(model) {}
KnownContents::~KnownContents() = default;

std::vector<Content> KnownContents::of(Id section, std::size_t variant, const Exact& batch) {
    auto& table = tables_[variant];
    if (!table) table = std::make_unique<ContentsTable>(model_, variant);
    return table->of(section, batch).contents;
}

std::vector<Content> contents(const Model& model, Id section, std::size_t variant, const Exact& batch) {
    return KnownContents(model).of(section, variant, batch);
}

}  // namespace scruple::check
