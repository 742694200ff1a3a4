// SPDX-License-Identifier: MIT
#include "scruple/plan/evening.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

#include "ingredients.hpp"
#include "pace.hpp"

namespace scruple::plan {

namespace {

/// A solution of the evening on its way to the timeline.
struct ToMix {
    const Mixing* mixing;
    Card card;
    std::vector<PacedStep> steps;
};

std::int64_t bottles_of(const Mixing& mixing) {
    if (!mixing.use_by) return 0;
    std::int64_t count = 0;
    for (const auto& row : mixing.bottles) count += row.count;
    return std::max<std::int64_t>(count, 1);
}

Refusal nothing_on(const MixingCalendar& calendar, check::Day day) {
    std::string days;
    for (const auto& one : calendar.days) days += (days.empty() ? "" : ", ") + day_text(one.day);
    return {fmt::format("nothing is mixed for {} on {}; {}", calendar.plan, day_text(day),
                        days.empty() ? "nothing is mixed for it at all" : "its mixing days are " + days)};
}

class EveningMaker {
  public:
    EveningMaker(const check::Model& model, const EveningRequest& request)
        : model_(model),
          request_(request),
          cards_(model),
          pace_(pace_of(request.bench == check::none ? nullptr : &model.benches[request.bench])) {}

    std::variant<Evening, Refusal> run() {
        const MixingCalendar calendar = mixing_calendar(model_, request_.plan, request_.bench);
        const auto day = std::ranges::find(calendar.days, request_.day, &MixingDay::day);
        if (day == calendar.days.end()) return nothing_on(calendar, request_.day);
        for (const Mixing& mixing : day->mixings)
            if (auto refusal = take(mixing)) return *refusal;
        const auto jobs = timed_jobs();
        const std::size_t least = least_vessels(jobs);
        if (request_.vessels && *request_.vessels < least)
            return Refusal{
                fmt::format("that is too few vessels: what is used on {} stays in its own, and all of it takes {}",
                            day_text(request_.day), least)};
        const Timeline timeline = shortest_timeline(jobs, request_.vessels.value_or(jobs.size()));
        return told(calendar, jobs, timeline);
    }

  private:
    std::optional<Refusal> take(const Mixing& mixing) {
        CardRequest request;
        request.section = mixing.solution;
        request.bench = request_.bench;
        request.mixed_on = request_.day;
        request.how_much = MakeVolume{mixing.volume.value * (mixing.volume.unit == "l" ? 1000 : 1)};
        auto card = cards_.make(request);
        if (auto* refusal = std::get_if<Refusal>(&card))
            return Refusal{fmt::format("{}: {}", mixing.name, refusal->message)};
        auto steps = paced(std::get<Card>(card), pace_, bottles_of(mixing));
        if (auto refusal = too_much(mixing, steps)) return refusal;
        to_mix_.push_back({&mixing, std::get<Card>(std::move(card)), std::move(steps)});
        return std::nullopt;
    }

    /// Of steps that are searched through in every order there can be so many, and none longer than minutes are
    /// counted.
    [[nodiscard]] std::optional<Refusal> too_much(const Mixing& mixing, const std::vector<PacedStep>& steps) {
        for (const auto& [work, timed] : steps) {
            if (std::max(timed.hands, timed.alone) <= longest_in_an_evening) continue;
            const std::string which = work.n > 0 ? fmt::format("step {} of its card", work.n) : work.what;
            return Refusal{fmt::format(
                "{}: {} takes more than {} minutes, and no evening is laid out so far ahead; mix it by its card",
                mixing.name, which, longest_in_an_evening)};
        }
        steps_ += steps.size();
        if (steps_ <= most_of_an_evening) return std::nullopt;
        return Refusal{
            fmt::format("{}: with it the evening has more than {} steps, and no more are laid out; have it stirred "
                        "less often, or mix "
                        "it by its card",
                        mixing.name, most_of_an_evening)};
    }

    /// A line that takes of another solution of the evening waits until that is done.
    [[nodiscard]] std::vector<TimedJob> timed_jobs() const {
        std::vector<TimedJob> jobs;
        for (const ToMix& one : to_mix_) {
            TimedJob& job = jobs.emplace_back();
            job.keeps_vessel = bottles_of(*one.mixing) == 0;
            const auto& section = model_.sections[one.mixing->solution];
            if (job.keeps_vessel && section.use_within)
                job.fresh_for = static_cast<Minutes>(std::min(section.use_within->to_double() / 60, 10'000.0));
            for (const PacedStep& step : one.steps) {
                job.steps.push_back(step.timed);
                const auto other = std::ranges::find(
                    to_mix_, step.work.what, [](const ToMix& mix) -> const std::string& { return mix.mixing->name; });
                if (other != to_mix_.end())
                    job.steps.back().after.push_back(static_cast<std::size_t>(other - to_mix_.begin()));
            }
        }
        return jobs;
    }

    [[nodiscard]] Evening told(const MixingCalendar& calendar, const std::vector<TimedJob>& jobs,
                               const Timeline& timeline) const {
        Evening evening;
        evening.plan = calendar.plan;
        evening.day = request_.day;
        evening.from = request_.from;
        evening.minutes = timeline.minutes;
        evening.one_after_the_other = one_after_the_other(jobs);
        evening.proven = timeline.proven;
        std::vector<std::size_t> order(jobs.size());
        std::iota(order.begin(), order.end(), 0);
        std::ranges::sort(order, {}, [&](std::size_t job) { return timeline.starts[job].front(); });
        const auto vessels = vessels_of(jobs, timeline);
        for (const std::size_t job : order) {
            evening.solutions.push_back(solution(jobs[job], to_mix_[job], timeline.starts[job]));
            evening.solutions.back().vessel = vessels[job] + 1;
            evening.vessels = std::max(evening.vessels, vessels[job] + 1);
            add_steps(evening, to_mix_[job], timeline.starts[job]);
            add_cautions_of(evening, to_mix_[job].card);
        }
        std::ranges::sort(evening.steps, {}, &EveningStep::start);
        evening.assumed = pace_words(pace_);
        warn(evening, calendar, timeline);
        return evening;
    }

    static EveningSolution solution(const TimedJob& job, const ToMix& one, const std::vector<Minutes>& starts) {
        EveningSolution solution;
        solution.name = one.mixing->name;
        solution.volume = one.mixing->volume;
        solution.begun = starts.front();
        solution.ready = starts.back() + job.steps.back().hands + job.steps.back().alone;
        solution.bottles = one.mixing->bottles;
        solution.use_within = one.card.use_within;
        solution.stays_in_vessel = job.keeps_vessel;
        return solution;
    }

    static void add_steps(Evening& evening, const ToMix& one, const std::vector<Minutes>& starts) {
        const std::size_t solution = evening.solutions.size() - 1;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            const TimedStep& timed = one.steps[i].timed;
            evening.hands += timed.hands;
            evening.steps.push_back({solution, starts[i], timed.hands, timed.alone, one.steps[i].work});
        }
    }

    static void add_cautions_of(Evening& evening, const Card& card) {
        for (const Caution& caution : card.cautions)
            if (std::ranges::find(evening.cautions, caution.text, &Caution::text) == evening.cautions.end())
                evening.cautions.push_back(caution);
        for (const AcceptedMeeting& it : card.accepted) {
            const auto same = [&it](const AcceptedMeeting& told) {
                return told.meeting == it.meeting && told.where == it.where;
            };
            if (std::ranges::none_of(evening.accepted, same)) evening.accepted.push_back(it);
        }
        for (const HazardRow& row : card.hazards)
            if (std::ranges::find(evening.hazards, row.chemical, &HazardRow::chemical) == evening.hazards.end())
                evening.hazards.push_back(row);
    }

    void warn(Evening& evening, const MixingCalendar& calendar, const Timeline& timeline) const {
        for (const ToMix& one : to_mix_)
            for (const Warning& warning : one.card.warnings)
                say_once(evening.warnings, fmt::format("{}: {}", one.mixing->name, warning.message));
        evening.warnings.insert(evening.warnings.end(), calendar.notes.begin(), calendar.notes.end());
        if (!timeline.fresh)
            evening.warnings.emplace_back(
                "in no order that was tried is all that is to be used within a time still "
                "within it when the last solution is done");
        if (!timeline.proven)
            evening.warnings.emplace_back(
                "there are too many orders to try them all: one that is done sooner is not "
                "ruled out");
    }

    const check::Model& model_;
    const EveningRequest& request_;
    CardMaker cards_;
    Pace pace_;
    std::vector<ToMix> to_mix_;
    std::size_t steps_ = 0;  ///< of all of them
};

}  // namespace

std::variant<Evening, Refusal> evening(const check::Model& model, const EveningRequest& request) {
    return EveningMaker(model, request).run();
}

}  // namespace scruple::plan
