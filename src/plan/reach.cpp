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

template <class T>
bool add_once(std::vector<T>& to, const T& it) {
    if (std::ranges::find(to, it) != to.end()) return false;
    to.push_back(it);
    return true;
}

class Walker {
  public:
    explicit Walker(const Model& model) : model_(model) {}

    /// The sections found are the list of those still to be walked: chains of recipes may be long.
    void walk(Id first) {
        reach.sections.push_back(first);
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
            add_once(reach.sections, addition.solution);
            return;
        }
        chemical(addition.chemical);
        if (!addition.solvent.empty()) solvent(addition.solvent);
        if (!addition.by_conversion) return;
        const Conversion* made_by = check::conversion_for(model_, addition);
        if (made_by == nullptr || !add_once(reach.conversions, made_by)) return;
        for (const auto& side : made_by->left) chemical(side.chemical);
        for (const auto& side : made_by->right) chemical(side.chemical);
    }

    void chemical(Id id) {
        if (id != check::none && id != model_.water) add_once(reach.chemicals, id);
    }

    void solvent(std::string_view name) {
        const auto found = std::ranges::find(model_.chemicals, name, &check::Chemical::name);
        if (found != model_.chemicals.end()) chemical(static_cast<Id>(found - model_.chemicals.begin()));
    }

    const Model& model_;
};

}  // namespace

Reach reach_of(const Model& model, Id section) {
    Walker walker(model);
    walker.walk(section);
    return std::move(walker.reach);
}

bool fixes(const check::Model& model, check::Id section) {
    const check::Id recipe = model.sections[section].recipe;
    if (recipe != check::none && model.recipes[recipe].is_a.find("fixer") != std::string_view::npos) return true;
    return std::ranges::any_of(reach_of(model, section).chemicals, [&](check::Id id) {
        const std::string_view name = model.chemicals[id].name;
        return name.find("thiosulfate") != std::string_view::npos ||
               name.find("thiosulphate") != std::string_view::npos;
    });
}

}  // namespace scruple::plan
