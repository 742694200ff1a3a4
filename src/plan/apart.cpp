// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <set>
#include <tuple>

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
    return it.known.of(it.section, it.variant);
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
    for (const Content& content : contents(it)) names.insert(normal(it.known.model(), content.chemical));
    return names;
}

/// What a solution holds, whatever its amounts.
using Things = std::vector<std::tuple<std::vector<std::pair<chemistry::Element, check::Exact>>, check::Exact, Id>>;

/// Those before that are still to be paired, by what they hold, and by how much of the first thing is in them.
class ToPair {
  public:
    void add(std::size_t number, std::vector<Total> totals) {
        if (totals.empty()) return;
        const Things things = in_order(totals);
        const double first = totals.front().mol_per_l;
        of_things_[things].emplace(first, std::pair(number, std::move(totals)));
    }

    /// The nearest, from then on paired.
    std::optional<std::size_t> take(std::vector<Total> totals) {
        const auto those_at = of_things_.find(in_order(totals));
        if (those_at == of_things_.end()) return std::nullopt;
        auto& those = those_at->second;
        constexpr double most = 1 + (most_percent_apart + 0.1) / 100.0;
        const double first = totals.front().mol_per_l;
        auto nearest = those.end();
        double least = most_percent_apart;
        for (auto it = those.lower_bound(first / most); it != those.end() && it->first <= first * most; ++it) {
            const auto percent = percent_apart(it->second.second, totals);
            if (!percent || *percent > least || (nearest != those.end() && *percent == least)) continue;
            nearest = it;
            least = *percent;
            if (least == 0) break;
        }
        if (nearest == those.end()) return std::nullopt;
        const std::size_t number = nearest->second.first;
        those.erase(nearest);
        return number;
    }

  private:
    static Things in_order(std::vector<Total>& totals) {
        std::vector<std::pair<Things::value_type, std::size_t>> things;
        for (std::size_t i = 0; i < totals.size(); ++i) {
            things.push_back({{{}, totals[i].core.state, totals[i].isomer}, i});
            for (const auto& [element, atoms] : totals[i].core.atoms)
                std::get<0>(things.back().first).emplace_back(element, atoms);
        }
        std::ranges::sort(things);
        Things all;
        std::vector<Total> sorted;
        for (auto& [thing, i] : things) {
            all.push_back(std::move(thing));
            sorted.push_back(std::move(totals[i]));
        }
        totals = std::move(sorted);
        return all;
    }

    std::map<Things, std::multimap<double, std::pair<std::size_t, std::vector<Total>>>> of_things_;
};

}  // namespace

std::optional<double> apart(const SolutionOf& before, const SolutionOf& after) {
    const Model& old_model = before.known.model();
    const Model& new_model = after.known.model();
    const auto first = as_in(new_model, old_model, Totals(old_model).of(contents(before)));
    const auto second = Totals(new_model).of(contents(after));
    if (first.empty()) return std::nullopt;
    const auto percent = percent_apart(first, second);
    return percent && *percent <= most_percent_apart ? percent : std::nullopt;
}

std::vector<std::pair<std::size_t, std::size_t>> alike(const std::vector<SolutionOf>& before,
                                                       const std::vector<SolutionOf>& after) {
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    if (before.empty() || after.empty()) return pairs;
    const Model& old_model = before.front().known.model();
    const Model& new_model = after.front().known.model();
    const Totals of_old(old_model), of_new(new_model);
    ToPair to_pair;
    for (std::size_t i = 0; i < before.size(); ++i)
        to_pair.add(i, as_in(new_model, old_model, of_old.of(contents(before[i]))));
    for (std::size_t i = 0; i < after.size(); ++i) {
        auto totals = of_new.of(contents(after[i]));
        if (totals.empty()) continue;
        if (const auto number = to_pair.take(std::move(totals))) pairs.emplace_back(*number, i);
    }
    return pairs;
}

bool of_the_same_chemicals(const SolutionOf& before, const SolutionOf& after) {
    return chemicals(before) == chemicals(after);
}

}  // namespace scruple::plan
