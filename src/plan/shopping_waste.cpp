// SPDX-License-Identifier: MIT
// What is poured off in the course of a plan, by kind; what has taken up silver stands apart.
#include <algorithm>
#include <functional>

#include "reach.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Id;
using check::Model;

namespace {

std::string kind_of(const Model& model, Id solution) {
    const Id recipe = model.sections[solution].recipe;
    if (recipe == check::none || model.recipes[recipe].is_a.empty()) return check::shown_name(model, solution);
    return std::string(model.recipes[recipe].is_a);
}

struct WasteKind {
    std::string name;
    bool silver = false;
    check::Exact ml;
};

}  // namespace

std::vector<WasteRow> waste_of(const Model& model, const std::vector<Wanted>& wanted, const MixPlan& mixing) {
    Reaches reaches(model);
    std::vector<WasteKind> kinds;
    for (const auto& bath : wanted) {
        WasteKind kind{kind_of(model, bath.solution), fixes(model, reaches.of(bath.solution)), 0};
        auto at = std::ranges::find_if(
            kinds, [&](const WasteKind& other) { return other.name == kind.name && other.silver == kind.silver; });
        if (at == kinds.end()) at = kinds.insert(at, std::move(kind));
        at->ml += bath.ml;
        for (const auto& batch : mixing.of(bath.solution)->batches) at->ml += batch.beyond;
    }
    std::ranges::stable_sort(kinds, std::greater{}, &WasteKind::silver);
    std::vector<WasteRow> rows;
    rows.reserve(kinds.size());
    for (const auto& kind : kinds) rows.push_back({kind.name, rounded_up(kind.ml, true), kind.silver});
    return rows;
}

}  // namespace scruple::plan
