// SPDX-License-Identifier: MIT
#include "mix_attempt.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <unordered_map>

#include "bottle_rack.hpp"
#include "capacity.hpp"
#include "ingredients.hpp"
#include "lasting.hpp"
#include "scruple/plan/calendar.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Day;
using check::Exact;
using check::Id;

namespace {

using ByDay = std::map<Day, Exact>;
using Batches = std::vector<MixedBatch>;

// A bottle is half empty for longer than it is full: the time for half full holds from the day of mixing on.
const Exact opened = 0;

/// One solution of the plan: what it is made of, and the days for which it is needed.
struct Made {
    MixedSolution mixed;
    bool lasts = false;                         ///< nobody knows how long, and it is used again and again
    std::vector<std::pair<Id, Exact>> made_of;  ///< ml of another solution in one ml
    ByDay needed;
    const std::map<Day, BathDay>* days = nullptr;  ///< of a bath that is kept
};

std::vector<Day> days_in(const ByDay& by_day) {
    std::vector<Day> days;
    for (const auto& [day, ml] : by_day) days.push_back(day);
    return days;
}

/// What the tank takes at once, and what has gone over into the next bath until then.
void raise_to_fill(MixedBatch& batch, const std::map<Day, BathDay>& days) {
    Exact carried, most, of_it;
    for (const Day day : batch.used_on) {
        const auto met = days.find(day);
        if (met == days.end()) continue;
        if (carried + met->second.fill > most) {
            most = carried + met->second.fill;
            of_it = carried;
        }
        carried += met->second.carried;
    }
    if (most <= batch.ml) return;
    batch.beyond = most - batch.ml;
    batch.ml = most;
    batch.raised = fmt::format("{} at once, to fill the tank", volume_words(most - of_it));
    if (of_it > 0) batch.raised += fmt::format(", and {} that go over into the next bath", volume_words(of_it));
}

Batches batches_of(const Made& made, const ByDay& by_day, const std::vector<Day>& mixed_on) {
    Batches batches;
    std::size_t at = 0;
    for (const auto& [day, ml] : by_day) {
        const Day on = mixed_on[at++];
        if (batches.empty() || batches.back().day != on) batches.push_back({on, {}, {}, {}, {}, {}});
        batches.back().ml += ml;
        batches.back().used_on.push_back(day);
    }
    if (made.days != nullptr)
        for (MixedBatch& batch : batches) raise_to_fill(batch, *made.days);
    return batches;
}

class MixingAround {
  public:
    MixingAround(const MixTask& task, const PutOff& put_off) : task_(task), put_off_(put_off), on_hand_(task.on_hand) {
        std::vector<Id> baths;
        baths.reserve(task.wanted.size());
        for (const auto& bath : task.wanted) baths.push_back(bath.solution);
        for (const Id solution : in_order_of_making(task.model, baths)) {
            places_.emplace(solution, made_.size());
            made_.push_back(looked_up(solution));
        }
        for (const auto& bath : task.wanted) {
            Made& made = made_of(bath.solution);
            made.needed = bath.by_day;
            if (!bath.days.empty()) made.days = &bath.days;
            const bool reused = says(check::capacity_of(task.model, bath.solution), check::CapacityRule::What::reused);
            if (!made.mixed.keeps && made.lasts && reused) made.mixed.keeps = true;
        }
    }

    MixAttempt run() {
        for (Made& made : made_) settle(made);
        std::vector<MixingNeeds> needs;
        for (const Made& made : made_)
            if (made.mixed.weighed) needs.push_back(windows_of(made, made.needed));
        attempt_.worth = fewest_mixing_days(needs);
        mix_on(attempt_.worth.days);
        for (Made& made : made_) attempt_.plan.solutions.push_back(std::move(made.mixed));
        put_into_bottles();
        attempt_.plan.notes = on_hand_.passed_over();
        return std::move(attempt_);
    }

  private:
    [[nodiscard]] const check::Section& section(Id solution) const { return task_.model.sections[solution]; }

    [[nodiscard]] Made looked_up(Id solution) const {
        Made made{.mixed = {.solution = solution, .held = {}, .batches = {}}, .made_of = {}, .needed = {}};
        constexpr Day some_day = 0;
        const auto last = use_by(section(solution), some_day, opened).day;
        made.mixed.keeps = last && *last > some_day;
        made.lasts = !last;
        for (const auto& ingredient : ingredients_of(task_.model, solution, 1).list) {
            if (ingredient.solution != check::none)
                made.made_of.emplace_back(ingredient.solution, ingredient.ml);
            else
                made.mixed.weighed = made.mixed.weighed || ingredient.amount.ware.chemical != task_.model.water;
        }
        return made;
    }

    Made& made_of(Id solution) { return made_[places_.at(solution)]; }

    /// Whether the days on which it is mixed are looked for together with those of others.
    static bool is_scheduled(const Made& made) { return made.mixed.keeps && made.mixed.weighed; }

    /// What is on hand does for the first days; what is mixed on days of its own asks for its parts on them.
    void settle(Made& made) {
        made.needed = less_what_is_on_hand(made, std::move(made.needed));
        if (is_scheduled(made)) return;
        for (const auto& batch : batches_of(made, made.needed, own_days(made, made.needed)))
            for (const auto& [part, share] : made.made_of) made_of(part).needed[batch.day] += batch.ml * share;
    }

    /// What is diluted is diluted on the day of its use, but for a bath that is kept and used again.
    [[nodiscard]] std::vector<Day> own_days(const Made& made, const ByDay& by_day) const {
        const bool again = made.mixed.keeps && made.days != nullptr;
        return again ? mixed_for(windows_of(made, by_day), days_in(by_day)) : days_in(by_day);
    }

    /// How early it may be mixed: counted from the earliest day on which its time has not run out.
    [[nodiscard]] MixingNeeds windows_of(const Made& made, const ByDay& by_day) const {
        MixingNeeds needs;
        Day put_off_to = INT32_MIN;
        for (const auto& [day, ml] : by_day) {
            if (const auto said = put_off_.find({made.mixed.solution, day}); said != put_off_.end())
                put_off_to = std::max(put_off_to, said->second);
            needs.windows.push_back({std::min(std::max(earliest_for(made, day), put_off_to), day), day});
        }
        return needs;
    }

    [[nodiscard]] Day earliest_for(const Made& made, Day day) const {
        if (!made.mixed.keeps) return day;
        constexpr Day longest = 3660;
        Day low = day - longest, high = day;
        if (made.lasts) return low;
        while (low < high) {
            const Day middle = low + (high - low) / 2;
            if (*use_by(section(made.mixed.solution), middle, opened).day >= day)
                high = middle;
            else
                low = middle + 1;
        }
        return low;
    }

    /// Down from the baths: by then all that is made of a solution has said on which days it is mixed.
    void mix_on(const std::vector<Day>& days) {
        std::map<Id, ByDay> asked;
        for (Made& made : made_) {
            ByDay by_day = made.needed;
            for (const auto& [day, ml] : less_what_is_on_hand(made, asked[made.mixed.solution])) by_day[day] += ml;
            const auto mixed = is_scheduled(made) ? mixed_for(windows_of(made, by_day), days) : own_days(made, by_day);
            made.mixed.batches = batches_of(made, by_day, mixed);
            if (!is_scheduled(made)) continue;
            for (const auto& batch : made.mixed.batches)
                for (const auto& [part, share] : made.made_of) asked[part][batch.day] += batch.ml * share;
        }
    }

    ByDay less_what_is_on_hand(Made& made, ByDay by_day) {
        for (auto& [day, ml] : by_day) {
            const Exact taken = on_hand_.take(made.mixed.solution, day, ml);
            made.mixed.held += taken;
            ml -= taken;
        }
        std::erase_if(by_day, [](const auto& need) { return need.second <= 0; });
        return by_day;
    }

    // ---- bottles ----

    struct Standing {
        MixedSolution* solution;
        MixedBatch* batch;
    };

    void put_into_bottles() {
        BottleRack rack(task_.bottles);
        for (const auto& held : on_hand_.standing())
            static_cast<void>(rack.fill(held.ml, task_.first, held.emptied.value_or(INT32_MAX)));
        std::vector<Standing> standing;
        // What others are made of stands first on its day.
        for (auto made = attempt_.plan.solutions.rbegin(); made != attempt_.plan.solutions.rend(); ++made)
            for (MixedBatch& batch : made->batches)
                if (made->keeps && batch.used_on.back() > batch.day) standing.push_back({&*made, &batch});
        std::ranges::stable_sort(standing, {}, [](const Standing& one) { return one.batch->day; });
        for (const Standing& one : standing) {
            auto bottles = rack.fill(one.batch->ml, one.batch->day, one.batch->used_on.back());
            if (bottles)
                one.batch->bottles = std::move(*bottles);
            else if (!attempt_.jam)
                attempt_.jam = jammed(standing, one);
        }
    }

    [[nodiscard]] Jam jammed(const std::vector<Standing>& standing, const Standing& last) const {
        const Day day = last.batch->day;
        Jam jam{day,
                fmt::format("the bottles of the bench do not hold all that stands in them on {}: {} of {} find none",
                            day_text(day), volume_words(last.batch->ml),
                            check::shown_name(task_.model, last.solution->solution)),
                {}};
        for (const Standing& one : standing) {
            if (one.batch->day > day) continue;
            for (const Day use : one.batch->used_on)
                if (use > day) jam.may_wait.emplace_back(one.solution->solution, use);
        }
        return jam;
    }

    const MixTask& task_;
    const PutOff& put_off_;
    HeldBatches on_hand_;
    std::vector<Made> made_;
    std::unordered_map<Id, std::size_t> places_;  ///< in made_
    MixAttempt attempt_;
};

}  // namespace

MixAttempt attempt_mixing(const MixTask& task, const PutOff& put_off) {
    return MixingAround(task, put_off).run();
}

}  // namespace scruple::plan
