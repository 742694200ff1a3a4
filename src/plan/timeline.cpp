// SPDX-License-Identifier: MIT
#include "scruple/plan/timeline.hpp"

#include <algorithm>
#include <tuple>

#include "step_order.hpp"

namespace scruple::plan {

namespace {

// An evening has a handful of orders that are worth trying; past this the best so far is taken. A step that is tried is
// held against every pair of jobs.
constexpr std::int64_t most_pairs_tried = 4'000'000;

class TimelineSearch {
  public:
    TimelineSearch(const std::vector<TimedJob>& jobs, std::size_t vessels)
        : jobs_(jobs), vessels_(vessels), order_(jobs) {
        for (const auto& job : jobs)
            for (const auto& step : job.steps) hands_left_ += step.hands;
        measure_tails();
    }

    Timeline run() {
        take_one_after_the_other();
        go_on();
        best_.proven = best_.fresh && tried_ <= most_pairs_tried;
        return std::move(best_);
    }

  private:
    /// From the beginning of each step to the end of all that waits for its job.
    void measure_tails() {
        tails_.resize(jobs_.size());
        const auto order = jobs_in_order(jobs_);
        for (auto job = order.rbegin(); job != order.rend(); ++job) {
            Minutes tail = after_job(*job);
            tails_[*job].resize(jobs_[*job].steps.size());
            for (std::size_t step = jobs_[*job].steps.size(); step-- > 0;) {
                tail += jobs_[*job].steps[step].hands + jobs_[*job].steps[step].alone;
                tails_[*job][step] = tail;
            }
        }
    }

    [[nodiscard]] Minutes after_job(std::size_t job) const {
        Minutes most = 0;
        for (std::size_t other = 0; other < jobs_.size(); ++other)
            for (std::size_t step = 0; step < jobs_[other].steps.size(); ++step)
                if (std::ranges::count(jobs_[other].steps[step].after, job) > 0)
                    most = std::max(most, tails_[other][step]);
        return most;
    }

    void take_one_after_the_other() {
        const auto order = jobs_in_order(jobs_);
        std::size_t steps = 0;
        for (const std::size_t job : order)
            for (; !order_.done(job); ++steps) static_cast<void>(order_.add(job));
        judge();
        for (; steps > 0; --steps) order_.drop();
    }

    void go_on() {
        if (tried_ > most_pairs_tried || cannot_be_better()) return;
        if (order_.all_done()) return judge();
        for (const std::size_t job : choices()) {
            tried_ += pairs_;
            const Minutes hands = jobs_[job].steps[order_.next(job)].hands;
            hands_left_ -= hands;
            if (order_.add(job)) go_on();
            order_.drop();
            hands_left_ += hands;
        }
    }

    /// What may come next: first what hurries no other step, then what begins first, then what has most to come.
    [[nodiscard]] std::vector<std::size_t> choices() const {
        std::vector<std::tuple<bool, Minutes, Minutes, std::size_t>> found;
        const bool room = open() < vessels_;
        for (std::size_t job = 0; job < jobs_.size(); ++job) {
            if (order_.done(job) || order_.waits(job)) continue;
            const std::size_t next = order_.next(job);
            if (next == 0 && !(room && leaves_a_vessel(job))) continue;
            const Minutes start = order_.earliest(job);
            found.emplace_back(hurries(job, start), start, -tails_[job][next], job);
        }
        std::ranges::sort(found);
        std::vector<std::size_t> jobs;
        jobs.reserve(found.size());
        for (const auto& [hurried, start, tail, job] : found) jobs.push_back(job);
        return jobs;
    }

    /// Whether another job's next step could then not follow as soon as it must, or has a rival that must follow soon.
    [[nodiscard]] bool hurries(std::size_t chosen, Minutes start) const {
        const auto& steps = jobs_[chosen].steps;
        const std::size_t next = order_.next(chosen);
        const bool binds = next + 1 < steps.size() && steps[next + 1].within;
        for (std::size_t job = 0; job < jobs_.size(); ++job) {
            if (job == chosen || order_.done(job)) continue;
            const auto latest = order_.latest(job);
            if (latest && (binds || start + steps[next].hands > *latest)) return true;
        }
        return false;
    }

    [[nodiscard]] std::size_t open() const {
        std::size_t count = 0;
        for (std::size_t job = 0; job < jobs_.size(); ++job)
            if (order_.next(job) > 0 && (jobs_[job].keeps_vessel || !order_.done(job))) ++count;
        return count;
    }

    /// One that keeps its vessel must leave another where bottled ones are still to come.
    [[nodiscard]] bool leaves_a_vessel(std::size_t begun) const {
        if (!jobs_[begun].keeps_vessel) return true;
        std::size_t kept = 1;
        bool bottled_to_come = false;
        for (std::size_t job = 0; job < jobs_.size(); ++job) {
            if (jobs_[job].keeps_vessel && order_.next(job) > 0) ++kept;
            bottled_to_come = bottled_to_come || (!jobs_[job].keeps_vessel && !order_.done(job));
        }
        return kept + (bottled_to_come ? 1 : 0) <= vessels_;
    }

    [[nodiscard]] bool cannot_be_better() const {
        Minutes least = order_.hands_free() + hands_left_;
        for (std::size_t job = 0; job < jobs_.size(); ++job)
            if (!order_.done(job) && !order_.waits(job))
                least = std::max(least, order_.earliest(job) + tails_[job][order_.next(job)]);
        return best_.fresh && least >= best_.minutes;
    }

    void judge() {
        const auto fresh = order_.fresh_starts();
        Timeline found{fresh.value_or(order_.starts()), 0, fresh.has_value(), true};
        for (std::size_t job = 0; job < jobs_.size(); ++job) {
            const auto& last = jobs_[job].steps.back();
            found.minutes = std::max(found.minutes, found.starts[job].back() + last.hands + last.alone);
        }
        const auto worth = [](const Timeline& one) { return std::pair(!one.fresh, one.minutes); };
        if (best_.starts.empty() || worth(found) < worth(best_)) best_ = std::move(found);
    }

    const std::vector<TimedJob>& jobs_;
    std::size_t vessels_;
    StepOrder order_;
    std::vector<std::vector<Minutes>> tails_;
    Minutes hands_left_ = 0;
    std::int64_t pairs_ = static_cast<std::int64_t>(jobs_.size() * jobs_.size()), tried_ = 0;
    Timeline best_;
};

}  // namespace

std::size_t least_vessels(const std::vector<TimedJob>& jobs) {
    std::size_t kept = 0, most = 0;
    for (const std::size_t job : jobs_in_order(jobs)) {
        most = std::max(most, kept + 1);
        if (jobs[job].keeps_vessel) ++kept;
    }
    return most;
}

Minutes one_after_the_other(const std::vector<TimedJob>& jobs) {
    Minutes all = 0;
    for (const auto& job : jobs)
        for (const auto& step : job.steps) all += step.hands + step.alone;
    return all;
}

Timeline shortest_timeline(const std::vector<TimedJob>& jobs, std::size_t vessels) {
    if (jobs.empty()) return {};
    return TimelineSearch(jobs, vessels).run();
}

std::vector<std::size_t> vessels_of(const std::vector<TimedJob>& jobs, const Timeline& timeline) {
    std::vector<std::pair<Minutes, std::size_t>> begun;
    for (std::size_t job = 0; job < jobs.size(); ++job) begun.emplace_back(timeline.starts[job].front(), job);
    std::ranges::sort(begun);
    std::vector<Minutes> free_from;
    std::vector<std::size_t> vessels(jobs.size());
    for (const auto& [start, job] : begun) {
        const auto free =
            std::ranges::find_if(free_from, [from_now = start](Minutes from) { return from <= from_now; });
        vessels[job] = static_cast<std::size_t>(free - free_from.begin());
        if (free == free_from.end()) free_from.emplace_back();
        free_from[vessels[job]] =
            jobs[job].keeps_vessel ? timeline.minutes + 1 : timeline.starts[job].back() + jobs[job].steps.back().hands;
    }
    return vessels;
}

}  // namespace scruple::plan
