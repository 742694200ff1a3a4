// SPDX-License-Identifier: MIT
#include "step_order.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

namespace scruple::plan {

namespace {

using Starts = std::vector<std::vector<Minutes>>;

/// Bottled ones first; then those that stay fresh the longest.
std::tuple<bool, Minutes, std::size_t> turn_of(const std::vector<TimedJob>& jobs, std::size_t job) {
    const Minutes fresh = jobs[job].fresh_for.value_or(std::numeric_limits<Minutes>::max());
    return {jobs[job].keeps_vessel, -fresh, job};
}

}  // namespace

std::vector<std::size_t> jobs_in_order(const std::vector<TimedJob>& jobs) {
    std::vector<std::size_t> order;
    std::vector<bool> placed(jobs.size());
    const auto waits = [&](std::size_t job) {
        for (const auto& step : jobs[job].steps)
            for (const std::size_t other : step.after)
                if (!placed[other]) return true;
        return false;
    };
    while (order.size() < jobs.size()) {
        std::size_t best = jobs.size();
        for (std::size_t job = 0; job < jobs.size(); ++job)
            if (!placed[job] && !waits(job) && (best == jobs.size() || turn_of(jobs, job) < turn_of(jobs, best)))
                best = job;
        placed[best] = true;
        order.push_back(best);
    }
    return order;
}

StepOrder::StepOrder(const std::vector<TimedJob>& jobs) : jobs_(jobs), next_(jobs.size()) {
    for (const auto& job : jobs) starts_.emplace_back(job.steps.size());
}

bool StepOrder::all_done() const {
    for (std::size_t job = 0; job < jobs_.size(); ++job)
        if (!done(job)) return false;
    return true;
}

bool StepOrder::waits(std::size_t job) const {
    return std::ranges::any_of(jobs_[job].steps[next_[job]].after, [&](std::size_t other) { return !done(other); });
}

Minutes StepOrder::finished(std::size_t job, const Starts& starts) const {
    const auto& last = jobs_[job].steps.back();
    return starts[job].back() + last.hands + last.alone;
}

/// Of the job's step before.
Minutes StepOrder::end_before(StepId id, const Starts& starts) const {
    if (id.step == 0) return 0;
    const auto& before = jobs_[id.job].steps[id.step - 1];
    return starts[id.job][id.step - 1] + before.hands + before.alone;
}

Minutes StepOrder::ready(StepId id, const Starts& starts) const {
    Minutes from = end_before(id, starts);
    for (const std::size_t other : at(id).after) from = std::max(from, finished(other, starts));
    return from;
}

Minutes StepOrder::earliest(std::size_t job) const {
    return std::max(free_, ready({job, next_[job]}, starts_));
}

std::optional<Minutes> StepOrder::latest(std::size_t job) const {
    const StepId id{job, next_[job]};
    if (id.step == 0 || !at(id).within) return std::nullopt;
    return end_before(id, starts_) + *at(id).within;
}

bool StepOrder::add(std::size_t job) {
    const StepId id{job, next_[job]++};
    before_.push_back({{}, free_});
    order_.push_back(id);
    Minutes& start = starts_[job][id.step];
    start = std::max(free_, ready(id, starts_));
    free_ = start + at(id).hands;
    if (!at(id).within || start - end_before(id, starts_) <= *at(id).within) return true;
    before_.back().starts = starts_;
    const bool held = settle(starts_, false);
    free_ = starts_[job][id.step] + at(id).hands;
    return held;
}

void StepOrder::drop() {
    if (!before_.back().starts.empty()) starts_ = std::move(before_.back().starts);
    free_ = before_.back().free;
    before_.pop_back();
    --next_[order_.back().job];
    order_.pop_back();
}

Minutes StepOrder::end_of(const Starts& starts) const {
    Minutes end = 0;
    for (const StepId id : order_) end = std::max(end, starts[id.job][id.step] + at(id).hands + at(id).alone);
    return end;
}

Minutes StepOrder::end() const {
    return end_of(starts_);
}

/// Each begins no earlier than its turn.
bool StepOrder::push(Starts& starts) const {
    bool moved = false;
    Minutes free = 0;
    for (const StepId id : order_) {
        Minutes& start = starts[id.job][id.step];
        const Minutes least = std::max(free, ready(id, starts));
        moved = moved || start < least;
        start = std::max(start, least);
        free = start + at(id).hands;
    }
    return moved;
}

/// What comes too early for its next step to follow soon enough begins later.
bool StepOrder::hold_within(Starts& starts) const {
    bool moved = false;
    for (const StepId id : order_) {
        if (!at(id).within || id.step == 0) continue;
        const Minutes late = starts[id.job][id.step] - end_before(id, starts) - *at(id).within;
        if (late <= 0) continue;
        starts[id.job][id.step - 1] += late;
        moved = true;
    }
    return moved;
}

bool StepOrder::hold_fresh(Starts& starts) const {
    bool moved = false;
    const Minutes end = end_of(starts);
    for (std::size_t job = 0; job < jobs_.size(); ++job) {
        if (!jobs_[job].fresh_for) continue;
        const Minutes late = end - *jobs_[job].fresh_for - finished(job, starts);
        if (late <= 0) continue;
        starts[job].back() += late;
        moved = true;
    }
    return moved;
}

/// The least starts that hold; where there are any, no chain of moves is longer than the order.
bool StepOrder::settle(Starts& starts, bool fresh) const {
    for (std::size_t pass = 0; pass <= order_.size() + 1; ++pass) {
        bool moved = push(starts);
        moved = hold_within(starts) || moved;
        moved = (fresh && hold_fresh(starts)) || moved;
        if (!moved) return true;
    }
    return false;
}

std::optional<Starts> StepOrder::fresh_starts() const {
    Starts starts = starts_;
    if (!settle(starts, true)) return std::nullopt;
    return starts;
}

}  // namespace scruple::plan
