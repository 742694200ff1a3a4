// SPDX-License-Identifier: MIT
#include "scruple/plan/mixing_calendar.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "lasting.hpp"
#include "log.hpp"
#include "mix_plan.hpp"
#include "scruple/plan/calendar.hpp"
#include "shopping_steps.hpp"
#include "uses.hpp"

namespace scruple::plan {

using check::Day;
using check::Id;
using check::Model;
using check::Use;

namespace {

/// What has gone through a batch before each of its days, and how much longer it takes on that day therefore.
std::vector<std::string> times_that_grow(const Model& model, const Wanted& bath, const MixedBatch& batch) {
    std::vector<std::string> lines;
    std::vector<Use> before;
    for (const Day day : batch.used_on) {
        const auto longer = lengthening(model, bath.solution, before);
        if (longer.any()) lines.push_back(fmt::format("{}: {}", day_text(day), longer_words(longer)));
        const auto met = bath.days.find(day);
        if (met != bath.days.end()) before.insert(before.end(), met->second.uses.begin(), met->second.uses.end());
    }
    return lines;
}

class Calendar {
  public:
    Calendar(const Model& model, const std::vector<Wanted>& wanted) : model_(model), wanted_(wanted) {}

    void enter(const MixedSolution& mixed, const MixedBatch& batch) {
        if (mixed.weighed) ++calendar.mixings;
        auto at = std::ranges::find(calendar.days, batch.day, &MixingDay::day);
        if (at == calendar.days.end()) at = calendar.days.insert(at, {batch.day, {}});
        at->mixings.push_back(mixing_of(mixed, batch));
    }

    void sort() {
        std::ranges::sort(calendar.days, {}, &MixingDay::day);
        for (auto& day : calendar.days)
            if (std::ranges::any_of(day.mixings, &Mixing::weighed)) ++calendar.weighing_days;
    }

    MixingCalendar calendar;

  private:
    [[nodiscard]] Mixing mixing_of(const MixedSolution& mixed, const MixedBatch& batch) const {
        constexpr int opened = 0;
        Mixing mixing{.solution = mixed.solution,
                      .name = check::shown_name(model_, mixed.solution),
                      .volume = rounded_up(batch.ml, true),
                      .weighed = mixed.weighed,
                      .bottles = {},
                      .last_use = batch.used_on.back(),
                      .use_by = {},
                      .keeps = {},
                      .used_on = batch.used_on,
                      .raised = batch.raised,
                      .longer = {}};
        const auto last = use_by(model_.sections[mixed.solution], batch.day, opened);
        mixing.keeps = last.because;
        for (const auto& [count, size] : batch.bottles) mixing.bottles.push_back({count, plain_ml(size)});
        if (mixed.keeps && mixing.last_use > batch.day) mixing.use_by = last.day;
        const auto bath = std::ranges::find(wanted_, mixed.solution, &Wanted::solution);
        if (bath != wanted_.end()) mixing.longer = times_that_grow(model_, *bath, batch);
        return mixing;
    }

    const Model& model_;
    const std::vector<Wanted>& wanted_;
};

void say_what_is_taken_as_known(std::vector<std::string>& notes) {
    notes.emplace_back("what is on hand is used first, on the earliest days, the oldest first and none past its time");
    notes.emplace_back(
        "days of weighing are the fewest; of those, mixings; of those, days of waiting between mixing and use. A batch "
        "is as large as its uses, or as the tank: nothing else is left over by plan");
    notes.emplace_back("every bottle is counted as half full from the day on which it is mixed");
}

}  // namespace

MixingCalendar mixing_calendar(const Model& model, Id plan, Id bench) {
    const check::Plan& month = model.plans[plan];
    std::vector<std::string> notes;
    const auto wanted = wanted_by(model, month, notes);
    const Day first = first_day(month);
    static_cast<void>(stock_on(model, first, notes));  // For what it says of the log.
    const MixPlan mixing = plan_mixing(model, wanted, first, bench);
    Calendar entered(model, wanted);
    // What others are made of comes first on its day.
    for (auto mixed = mixing.solutions.rbegin(); mixed != mixing.solutions.rend(); ++mixed)
        for (const auto& batch : mixed->batches) entered.enter(*mixed, batch);
    entered.sort();
    MixingCalendar calendar = std::move(entered.calendar);
    calendar.plan = month.name;
    calendar.notes = std::move(notes);
    calendar.notes.insert(calendar.notes.end(), mixing.notes.begin(), mixing.notes.end());
    calendar.proven = mixing.proven;
    say_what_is_taken_as_known(calendar.notes);
    return calendar;
}

}  // namespace scruple::plan
