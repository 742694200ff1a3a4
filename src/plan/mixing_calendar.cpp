// SPDX-License-Identifier: MIT
#include "scruple/plan/mixing_calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "held_batches.hpp"
#include "ingredients.hpp"
#include "lasting.hpp"
#include "log.hpp"
#include "scruple/plan/mixing_days.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Day;
using check::Exact;
using check::Id;
using check::Model;

namespace {

using ByDay = std::map<Day, Exact>;

// A bottle is half empty for longer than it is full: the time for half full holds from the day of mixing on.
const Exact opened = 0;

/// One solution of the plan: what it is made of, and the days for which it is needed.
struct Made {
    Id solution = check::none;
    bool weighed = false;                       ///< a chemical goes into it, and not solutions and water alone
    bool keeps = false;                         ///< longer than the day on which it is mixed
    std::vector<std::pair<Id, Exact>> made_of;  ///< ml of another solution in one ml
    ByDay fixed;                                ///< whatever the days of mixing are
};

Exact ml_of(const Figure& volume) {
    return volume.value * (volume.unit == "l" ? 1000 : 1);
}

class Calendar {
  public:
    Calendar(const Model& model, HeldBatches on_hand, const std::vector<Wanted>& wanted,
             const std::vector<Exact>& bottles)
        : model_(model), on_hand_(std::move(on_hand)), bottles_(bottles) {
        std::vector<Id> baths;
        baths.reserve(wanted.size());
        for (const auto& bath : wanted) baths.push_back(bath.solution);
        for (const Id solution : in_order_of_making(model, baths)) made_.push_back(looked_up(solution));
        for (const auto& bath : wanted) made_of(bath.solution).fixed = bath.by_day;
        for (auto& made : made_) settle(made);
    }

    MixingCalendar run() {
        std::vector<MixingNeeds> needs;
        for (const auto& made : made_)
            if (made.weighed) needs.push_back(windows_of(made, made.fixed));
        const MixingDays found = fewest_mixing_days(needs);
        calendar_.proven = found.proven;
        mix_on(found.days);
        calendar_.notes = on_hand_.passed_over();
        return std::move(calendar_);
    }

  private:
    [[nodiscard]] Made looked_up(Id solution) const {
        Made made{solution, false, false, {}, {}};
        constexpr Day some_day = 0;
        const auto last = use_by(model_.sections[solution], some_day, opened).day;
        made.keeps = last && *last > some_day;
        const auto ingredients = ingredients_of(model_, solution, 1);
        for (const auto& ingredient : ingredients.list) {
            if (ingredient.solution != check::none)
                made.made_of.emplace_back(ingredient.solution, ingredient.ml);
            else
                made.weighed = made.weighed || ingredient.amount.ware.chemical != model_.water;
        }
        return made;
    }

    Made& made_of(Id solution) { return *std::ranges::find(made_, solution, &Made::solution); }

    /// What is on hand does for the first days; what is mixed on the day of its use asks for its parts on that day.
    void settle(Made& made) {
        made.fixed = less_what_is_on_hand(made.solution, std::move(made.fixed));
        if (made.keeps && made.weighed) return;
        for (const auto& [day, ml] : made.fixed)
            for (const auto& [part, share] : made.made_of) made_of(part).fixed[day] += ml * share;
    }

    /// How early it may be mixed: counted from the earliest day on which its time has not run out.
    [[nodiscard]] MixingNeeds windows_of(const Made& made, const ByDay& by_day) const {
        MixingNeeds needs;
        for (const auto& [day, ml] : by_day) needs.windows.push_back({earliest_for(made, day), day});
        return needs;
    }

    [[nodiscard]] Day earliest_for(const Made& made, Day day) const {
        if (!made.keeps) return day;
        constexpr Day longest = 3660;
        Day low = day - longest, high = day;
        while (low < high) {
            const Day middle = low + (high - low) / 2;
            if (*use_by(model_.sections[made.solution], middle, opened).day >= day)
                high = middle;
            else
                low = middle + 1;
        }
        return low;
    }

    /// Down from the baths: by then all that is made of a solution has said on which days it is mixed.
    void mix_on(const std::vector<Day>& days) {
        std::map<Id, ByDay> asked;
        for (const auto& made : made_) {
            ByDay by_day = made.fixed;
            for (const auto& [day, ml] : less_what_is_on_hand(made.solution, asked[made.solution])) by_day[day] += ml;
            // What is only diluted is diluted on the day of its use.
            const auto mixed = made.weighed ? mixed_for(windows_of(made, by_day), days) : days_in(by_day);
            std::map<Day, Mixing> mixings = gathered(made, by_day, mixed);
            for (auto& [day, mixing] : mixings) {
                if (made.keeps && made.weighed)
                    for (const auto& [part, share] : made.made_of) asked[part][day] += ml_of(mixing.volume) * share;
                enter(day, std::move(mixing));
            }
        }
        std::ranges::sort(calendar_.days, {}, &MixingDay::day);
        for (auto& day : calendar_.days) {
            std::ranges::reverse(day.mixings);
            if (std::ranges::any_of(day.mixings, &Mixing::weighed)) ++calendar_.weighing_days;
        }
    }

    [[nodiscard]] static std::vector<Day> days_in(const ByDay& by_day) {
        std::vector<Day> days;
        for (const auto& [day, ml] : by_day) days.push_back(day);
        return days;
    }

    ByDay less_what_is_on_hand(Id solution, ByDay by_day) {
        for (auto& [day, ml] : by_day) ml -= on_hand_.take(solution, day, ml);
        std::erase_if(by_day, [](const auto& need) { return need.second <= 0; });
        return by_day;
    }

    std::map<Day, Mixing> gathered(const Made& made, const ByDay& by_day, const std::vector<Day>& mixed) const {
        std::map<Day, Exact> volumes;
        std::map<Day, Mixing> mixings;
        std::size_t at = 0;
        for (const auto& [day, ml] : by_day) {
            const Day on = mixed[at++];
            volumes[on] += ml;
            mixings[on].used_on.push_back(day);
        }
        for (auto& [day, mixing] : mixings) describe(mixing, made, day, volumes[day]);
        return mixings;
    }

    void describe(Mixing& mixing, const Made& made, Day day, const Exact& ml) const {
        mixing.solution = made.solution;
        mixing.name = check::shown_name(model_, made.solution);
        mixing.volume = rounded_up(ml, true);
        mixing.weighed = made.weighed;
        mixing.last_use = mixing.used_on.back();
        const auto last = use_by(model_.sections[made.solution], day, opened);
        mixing.keeps = last.because;
        if (!made.keeps || mixing.last_use == day) return;
        mixing.use_by = last.day;
        for (const auto& [count, size] : bottles_for(ml_of(mixing.volume), bottles_))
            mixing.bottles.push_back({count, plain_ml(size)});
    }

    void enter(Day day, Mixing mixing) {
        if (mixing.weighed) ++calendar_.mixings;
        auto at = std::ranges::find(calendar_.days, day, &MixingDay::day);
        if (at == calendar_.days.end()) at = calendar_.days.insert(at, {day, {}});
        at->mixings.push_back(std::move(mixing));
    }

    const Model& model_;
    HeldBatches on_hand_;
    const std::vector<Exact>& bottles_;
    std::vector<Made> made_;
    MixingCalendar calendar_;
};

void say_what_is_taken_as_known(MixingCalendar& calendar) {
    calendar.notes.emplace_back(
        "what is on hand is used first, on the earliest days, the oldest first and none past its time");
    calendar.notes.emplace_back(
        "days of weighing are the fewest; of those, mixings; of those, days of waiting between mixing and use. A batch "
        "is as large as its uses: nothing is left over by plan");
    calendar.notes.emplace_back("every bottle is counted as half full from the day on which it is mixed");
    if (!calendar.proven)
        calendar.notes.emplace_back(
            "there are too many sets of days to go through them all: the days are as few as can "
            "be, and fewer mixings on as many days are not ruled out");
}

}  // namespace

MixingCalendar mixing_calendar(const Model& model, Id plan, Id bench) {
    const check::Plan& month = model.plans[plan];
    std::vector<std::string> warnings;
    const auto wanted = wanted_by(model, month, warnings);
    Day first = 0;
    for (const auto& bath : wanted)
        for (const auto& [day, ml] : bath.by_day) first = first == 0 ? day : std::min(first, day);
    const std::vector<Exact> none;
    const auto& bottles = bench == check::none ? none : model.benches[bench].bottles_ml;
    static_cast<void>(stock_on(model, first, warnings));  // For what it says of the log.
    MixingCalendar calendar = Calendar(model, HeldBatches(model, first), wanted, bottles).run();
    calendar.plan = month.name;
    calendar.notes.insert(calendar.notes.begin(), warnings.begin(), warnings.end());
    say_what_is_taken_as_known(calendar);
    return calendar;
}

}  // namespace scruple::plan
