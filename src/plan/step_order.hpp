// SPDX-License-Identifier: MIT
// Steps of several jobs in one order, and when each then begins.
#pragma once

#include <vector>

#include "scruple/plan/timeline.hpp"

namespace scruple::plan {

struct StepId {
    std::size_t job = 0, step = 0;
};

/// The jobs in an order in which none waits for a later one: those that keep their vessels as late as may be, and of
/// those the soonest stale last.
[[nodiscard]] std::vector<std::size_t> jobs_in_order(const std::vector<TimedJob>& jobs);

/// An order of steps that grows and shrinks at its end.
class StepOrder {
  public:
    explicit StepOrder(const std::vector<TimedJob>& jobs);

    /// When a job's next step could begin if it came next; it must not be done, nor wait for one that is not.
    [[nodiscard]] Minutes earliest(std::size_t job) const;
    /// When it must have begun so that nothing before it need be moved; none: at any time.
    [[nodiscard]] std::optional<Minutes> latest(std::size_t job) const;
    [[nodiscard]] bool waits(std::size_t job) const;
    [[nodiscard]] bool all_done() const;
    [[nodiscard]] bool done(std::size_t job) const { return next_[job] == jobs_[job].steps.size(); }
    [[nodiscard]] std::size_t next(std::size_t job) const { return next_[job]; }

    /// Puts the job's next step at the end. Steps before it begin later where it could not follow soon enough
    /// otherwise; false where that does not help. `drop` takes it off again in either case.
    [[nodiscard]] bool add(std::size_t job);
    void drop();

    [[nodiscard]] Minutes hands_free() const { return free_; }
    [[nodiscard]] Minutes end() const;
    [[nodiscard]] const std::vector<std::vector<Minutes>>& starts() const { return starts_; }

    /// All steps as early as the order allows and so late that every job is fresh at the end; none where that cannot
    /// be.
    [[nodiscard]] std::optional<std::vector<std::vector<Minutes>>> fresh_starts() const;

  private:
    [[nodiscard]] Minutes end_before(StepId id, const std::vector<std::vector<Minutes>>& starts) const;
    [[nodiscard]] Minutes ready(StepId id, const std::vector<std::vector<Minutes>>& starts) const;
    [[nodiscard]] Minutes finished(std::size_t job, const std::vector<std::vector<Minutes>>& starts) const;
    [[nodiscard]] Minutes end_of(const std::vector<std::vector<Minutes>>& starts) const;
    bool push(std::vector<std::vector<Minutes>>& starts) const;
    bool hold_within(std::vector<std::vector<Minutes>>& starts) const;
    bool hold_fresh(std::vector<std::vector<Minutes>>& starts) const;
    bool settle(std::vector<std::vector<Minutes>>& starts, bool fresh) const;
    [[nodiscard]] const TimedStep& at(StepId id) const { return jobs_[id.job].steps[id.step]; }

    const std::vector<TimedJob>& jobs_;
    std::vector<std::size_t> next_;
    std::vector<StepId> order_;
    std::vector<std::vector<Minutes>> starts_;
    Minutes free_ = 0;
    struct Before {
        std::vector<std::vector<Minutes>> starts;  ///< empty where only the last step was put there
        Minutes free;
    };
    std::vector<Before> before_;
};

}  // namespace scruple::plan
