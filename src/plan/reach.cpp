// SPDX-License-Identifier: MIT
#include "reach.hpp"

#include <algorithm>

#include "scruple/check/making.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Conversion;
using check::Id;
using check::Model;

/// Ids in the order in which they come first.
class Once {
  public:
    Once(std::vector<Id>& list, std::size_t most) : list_(list), seen_(most) {}
    void add(Id id) {
        if (seen_[id]) return;
        seen_[id] = true;
        list_.push_back(id);
    }

  private:
    std::vector<Id>& list_;
    std::vector<bool> seen_;
};

class Walker {
  public:
    explicit Walker(const Model& model)
        : model_(model),
          sections_(reach.sections, model.sections.size()),
          chemicals_(reach.chemicals, model.chemicals.size()) {}

    /// The sections found are the list of those still to be walked: chains of recipes may be long.
    void walk(Id first) {
        sections_.add(first);
        for (std::size_t next = 0; next < reach.sections.size(); ++next) {
            const Id id = reach.sections[next];
            for (const check::Line& line : model_.sections[id].lines)
                if (const auto* addition = std::get_if<Addition>(&line)) add(*addition);
        }
    }

    Reach reach;

  private:
    void add(const Addition& addition) {
        if (addition.solution != check::none) {
            sections_.add(addition.solution);
            return;
        }
        chemical(addition.chemical);
        if (!addition.solvent.empty()) solvent(addition.solvent);
        if (!addition.by_conversion) return;
        const Conversion* made_by = check::conversion_for(model_, addition);
        if (made_by == nullptr || std::ranges::count(reach.conversions, made_by) > 0) return;
        reach.conversions.push_back(made_by);
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
    Once sections_, chemicals_;
};

}  // namespace

Reach reach_of(const Model& model, Id section) {
    Walker walker(model);
    walker.walk(section);
    return std::move(walker.reach);
}

bool fixes(const Model& model, const Reach& reach) {
    const Id recipe = model.sections[reach.sections.front()].recipe;
    if (recipe != check::none && model.recipes[recipe].is_a.find("fixer") != std::string_view::npos) return true;
    return std::ranges::any_of(reach.chemicals, [&](Id id) {
        const std::string_view name = model.chemicals[id].name;
        return name.find("thiosulfate") != std::string_view::npos ||
               name.find("thiosulphate") != std::string_view::npos;
    });
}

}  // namespace scruple::plan
