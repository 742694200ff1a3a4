// SPDX-License-Identifier: MIT
#include "reach.hpp"

#include <algorithm>
#include <unordered_set>

#include "scruple/check/making.hpp"

namespace scruple::plan {

namespace {

using check::Accepted;
using check::Addition;
using check::Conversion;
using check::Id;
using check::Model;

/// The solutions that go into it, in the order of its lines.
template <class Each>
void for_each_part(const check::Section& section, Each each) {
    for (const check::Line& line : section.lines)
        if (const auto* addition = std::get_if<Addition>(&line); addition && addition->solution != check::none)
            each(addition->solution);
}

/// Things in the order in which they come first.
template <class Thing>
class Once {
  public:
    explicit Once(std::vector<Thing>& list) : list_(list) {}
    void add(Thing it) {
        if (seen_.insert(it).second) list_.push_back(it);
    }
    void add_all(const std::vector<Thing>& those) {
        for (const Thing it : those) add(it);
    }

  private:
    std::vector<Thing>& list_;
    std::unordered_set<Thing> seen_;
};

class Gatherer {
  public:
    Gatherer(const Model& model, Id section) : model_(model) {
        reach_.section = section;
        telling_.add(section);
        for (const check::Line& line : model.sections[section].lines)
            if (const auto* addition = std::get_if<Addition>(&line); addition && addition->solution == check::none)
                add(*addition);
    }

    void add_part(const Reach& part, bool tells) {
        if (tells) telling_.add(part.section);
        telling_.add_all({part.telling.begin() + 1, part.telling.end()});
        chemicals_.add_all(part.chemicals);
        conversions_.add_all(part.conversions);
        reach_.anything_converted = reach_.anything_converted || part.anything_converted;
    }

    Reach take() { return std::move(reach_); }

  private:
    void add(const Addition& addition) {
        chemical(addition.chemical);
        if (!addition.solvent.empty()) solvent(addition.solvent);
        if (!addition.by_conversion) return;
        reach_.anything_converted = true;
        const Conversion* made_by = check::conversion_for(model_, addition);
        if (made_by == nullptr) return;
        conversions_.add(made_by);
        for (const auto& side : made_by->left) chemical(side.chemical);
        for (const auto& side : made_by->right) chemical(side.chemical);
    }

    void chemical(Id id) {
        if (id != check::none && id != model_.water) chemicals_.add(id);
    }

    void solvent(std::string_view name) {
        const auto found = std::ranges::find(model_.chemicals, name, &check::Chemical::name);
        if (found != model_.chemicals.end()) chemical(static_cast<Id>(found - model_.chemicals.begin()));
    }

    const Model& model_;
    Reach reach_;
    Once<Id> telling_{reach_.telling}, chemicals_{reach_.chemicals};
    Once<const Conversion*> conversions_{reach_.conversions};
};

bool has_cautions(const Model& model, Id section) {
    const check::Section& it = model.sections[section];
    return !it.cautions.empty() || (it.recipe != check::none && !model.recipes[it.recipe].cautions.empty());
}

}  // namespace

Reaches::Reaches(const Model& model) : model_(model) {
    for (const Accepted& it : model.accepted) {
        mixed_[it.section].push_back(&it);
        carried_[it.bath].push_back(&it);
        carried_[it.next].push_back(&it);
    }
    for (AcceptedBySection* lists : {&mixed_, &carried_}) lists->erase(check::none);
}

/// Not by recursion: chains of recipes may be long. What goes round in a circle is cut where it closes.
const Reach& Reaches::of(Id section) {
    std::vector<Id> way{section};
    std::unordered_set<Id> entered;
    while (!way.empty()) {
        const Id at = way.back();
        if (!known_.contains(at) && entered.insert(at).second) {
            for_each_part(model_.sections[at], [&](Id part) {
                if (!entered.contains(part)) way.push_back(part);
            });
            continue;
        }
        if (!known_.contains(at)) known_.emplace(at, made_of(at));
        way.pop_back();
    }
    return known_.at(section);
}

Reach Reaches::made_of(Id section) const {
    Gatherer gatherer(model_, section);
    for_each_part(model_.sections[section], [&](Id id) {
        const auto part = known_.find(id);
        if (part != known_.end()) gatherer.add_part(part->second, mixed_.contains(id) || has_cautions(model_, id));
    });
    return gatherer.take();
}

std::vector<const Accepted*> Reaches::accepted_in(const Reach& reach) const {
    std::vector<const Accepted*> all;
    const auto add = [&](const AcceptedBySection& lists, Id id) {
        if (const auto found = lists.find(id); found != lists.end())
            all.insert(all.end(), found->second.begin(), found->second.end());
    };
    for (const Id id : reach.telling) add(mixed_, id);
    add(carried_, reach.section);
    std::ranges::sort(all);
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

Reach reach_of(const Model& model, Id section) {
    return Reaches(model).of(section);
}

std::vector<Id> sections_within(const Model& model, Id section) {
    std::vector<Id> sections;
    Once<Id> once(sections);
    once.add(section);
    for (std::size_t next = 0; next < sections.size(); ++next)
        for_each_part(model.sections[sections[next]], [&](Id part) { once.add(part); });
    return sections;
}

bool fixes(const Model& model, const Reach& reach) {
    const Id recipe = model.sections[reach.section].recipe;
    if (recipe != check::none && model.recipes[recipe].is_a.find("fixer") != std::string_view::npos) return true;
    return std::ranges::any_of(reach.chemicals, [&](Id id) {
        const std::string_view name = model.chemicals[id].name;
        return name.find("thiosulfate") != std::string_view::npos ||
               name.find("thiosulphate") != std::string_view::npos;
    });
}

}  // namespace scruple::plan
