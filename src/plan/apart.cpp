// SPDX-License-Identifier: MIT
#include <set>

#include "scruple/plan/compare.hpp"
#include "scruple/plan/contents_sheet.hpp"
#include "scruple/syntax/normal.hpp"
#include "totals.hpp"

namespace scruple::plan {
namespace {

using check::Content;
using check::Id;
using check::Model;

std::vector<Content> contents(const SolutionOf& it) {
    return check::contents(it.model, it.section, it.variant);
}

std::string normal(const Model& model, Id chemical) {
    return syntax::normal_name(model.chemicals[chemical].name);
}

/// Isomers are told apart by the ids of their own workspace; the other's ids are put in their place.
std::vector<Total> as_in(const Model& other, const Model& model, std::vector<Total> totals) {
    for (Total& total : totals) {
        if (total.isomer == check::none) continue;
        const auto found = other.chemical_names.find(normal(model, total.isomer));
        total.isomer =
            found == other.chemical_names.end() ? static_cast<Id>(other.chemicals.size()) : found->second.first;
    }
    return totals;
}

std::set<std::string> chemicals(const SolutionOf& it) {
    std::set<std::string> names;
    for (const Content& content : contents(it)) names.insert(normal(it.model, content.chemical));
    return names;
}

}  // namespace

std::optional<double> apart(const SolutionOf& before, const SolutionOf& after) {
    const auto first = as_in(after.model, before.model, Totals(before.model).of(contents(before)));
    const auto second = Totals(after.model).of(contents(after));
    if (first.empty()) return std::nullopt;
    const auto percent = percent_apart(first, second);
    return percent && *percent <= most_percent_apart ? percent : std::nullopt;
}

bool of_the_same_chemicals(const SolutionOf& before, const SolutionOf& after) {
    return chemicals(before) == chemicals(after);
}

}  // namespace scruple::plan
