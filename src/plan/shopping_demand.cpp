// SPDX-License-Identifier: MIT
// From the days of a plan to what they take of each bath and replenisher.
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "capacity.hpp"
#include "scruple/plan/calendar.hpp"
#include "shopping_steps.hpp"
#include "uses.hpp"

namespace scruple::plan {

using check::Day;
using check::Exact;
using check::Id;
using check::Model;
using check::Use;

namespace {

using UsesByBath = std::vector<std::pair<Id, std::vector<Use>>>;

/// What goes through each bath on each day, baths in the order of the entries and stages.
std::map<Day, UsesByBath> days_in_baths(const Model& model, const check::Plan& plan) {
    std::map<Day, UsesByBath> days;
    for (const auto& entry : plan.entries) {
        if (entry.process == check::none) continue;
        for (const auto& stage : model.processes[entry.process].stages) {
            if (stage.solution == check::none) continue;
            for (const Day day : entry.days) {
                auto& baths = days[day];
                auto bath = std::ranges::find(baths, stage.solution, &UsesByBath::value_type::first);
                if (bath == baths.end()) bath = baths.insert(baths.end(), {stage.solution, {}});
                bath->second.insert(bath->second.end(), entry.uses.begin(), entry.uses.end());
            }
        }
    }
    return days;
}

class Demand {
  public:
    Demand(const Model& model, std::vector<std::string>& warnings) : model_(model), warnings_(warnings) {}

    void add_day(Day day, Id bath, const std::vector<Use>& uses) {
        first_use_.try_emplace(bath, day);
        add(bath, day, bath_draws(model_, bath, uses, warnings_));
        const Exact fill = fill_of(model_, bath, uses);
        if (model_.sections[bath].replenish)
            fills_[bath] = std::max(fills_[bath], fill);
        else if (!says(check::capacity_of(model_, bath), check::CapacityRule::What::one_shot))
            entry_for(bath).days[day] = {fill, carried_over(model_, bath, uses), uses};
        const TopUp more = top_up(model_, bath, uses, warnings_);
        if (more.solution == check::none) return;
        entry_for(bath);
        topped_up_[bath] += sum_of(more.draws);
        add(more.solution, day, more.draws);
    }

    std::vector<Wanted> settle() {
        for (const auto& [bath, ml] : topped_up_) keep_replenished(bath, ml);
        return std::move(wanted_);
    }

  private:
    Wanted& entry_for(Id solution) {
        const auto found = std::ranges::find(wanted_, solution, &Wanted::solution);
        if (found != wanted_.end()) return *found;
        return wanted_.emplace_back(Wanted{.solution = solution, .ml = {}, .because = {}});
    }

    void add(Id solution, Day day, const std::vector<Draw>& draws) {
        for (const auto& draw : draws) {
            Wanted& wanted = entry_for(solution);
            wanted.ml += draw.ml;
            wanted.by_day[day] += draw.ml;
            wanted.because.push_back(fmt::format("{} on {}: {}", draw.what, day_text(day), draw.how));
        }
    }

    /// A replenished bath is mixed once, and anew when it has been given as much as it may get.
    void keep_replenished(Id bath, const Exact& topped_up) {
        const auto& section = model_.sections[bath];
        const Exact fill = fills_[bath].is_zero() ? section.makes_ml : fills_[bath];
        Exact baths = 1;
        const auto& rule = *section.replenish;
        if (rule.at_most_ml && rule.at_most_per_ml && *rule.at_most_ml > 0 && *rule.at_most_per_ml > 0 && fill > 0)
            baths = std::max(baths, (topped_up / (fill * *rule.at_most_ml / *rule.at_most_per_ml)).ceil());
        Wanted& wanted = entry_for(bath);
        wanted.ml += fill * baths;
        wanted.by_day[first_use_.at(bath)] += fill * baths;
        wanted.because.push_back(fmt::format("{} × {}, replenished with {}", quantity::exact_text(baths),
                                             volume_words(fill), volume_words(topped_up)));
    }

    const Model& model_;
    std::vector<std::string>& warnings_;
    std::vector<Wanted> wanted_;
    std::map<Id, Exact> fills_, topped_up_;
    std::map<Id, Day> first_use_;
};

}  // namespace

Day first_day(const check::Plan& plan) {
    std::optional<Day> first;
    for (const auto& entry : plan.entries)
        for (const Day day : entry.days) first = std::min(first.value_or(day), day);
    return first.value_or(0);
}

std::vector<Wanted> wanted_by(const Model& model, const check::Plan& plan, std::vector<std::string>& warnings) {
    Demand demand(model, warnings);
    for (const auto& [day, baths] : days_in_baths(model, plan))
        for (const auto& [bath, uses] : baths) demand.add_day(day, bath, uses);
    return demand.settle();
}

}  // namespace scruple::plan
