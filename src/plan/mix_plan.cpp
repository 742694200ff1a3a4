// SPDX-License-Identifier: MIT
#include "mix_plan.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "mix_attempt.hpp"

namespace scruple::plan {

using check::Day;
using check::Id;
using check::Model;

namespace {

// Enough for a month that wants a bottle or two; past this the bottles are said to be wanting. An attempt takes the
// longer, the more uses there are.
constexpr std::size_t most_attempts = 250, most_uses_tried = 10'000;

std::size_t uses_of(const MixPlan& plan) {
    std::size_t uses = 1;
    for (const auto& mixed : plan.solutions)
        for (const auto& batch : mixed.batches) uses += batch.used_on.size();
    return uses;
}

/// Of ways to mix that put off one use or another, the one that costs the least first.
class FittingToBottles {
  public:
    explicit FittingToBottles(const MixTask& task) : task_(task) {}

    MixPlan run() {
        const MixAttempt first = attempt_mixing(task_, {});
        if (!first.jam) return said(first, first.worth.proven);
        keep(first, {});
        left_ = std::min(most_attempts, most_uses_tried / uses_of(first.plan));
        while (!waiting_.empty() && (left_ > 0 || !waiting_.begin()->second.first.jam)) {
            const auto cheapest = waiting_.begin();
            const auto [attempt, put_off] = cheapest->second;
            waiting_.erase(cheapest);
            if (!attempt.jam) return said(attempt, false);
            for (const auto& use : attempt.jam->may_wait) put_off_one(put_off, use, attempt.jam->day + 1);
        }
        MixPlan plan = said(first, first.worth.proven);
        plan.notes.push_back(first.jam->words);
        return plan;
    }

  private:
    using Worth = std::tuple<std::size_t, std::int64_t, std::int64_t>;

    void put_off_one(PutOff put_off, const MixUse& use, Day until) {
        Day& earliest = put_off.try_emplace(use, until).first->second;
        earliest = std::max(earliest, until);
        if (left_ == 0 || !seen_.insert(put_off).second) return;
        --left_;
        keep(attempt_mixing(task_, put_off), put_off);
    }

    void keep(const MixAttempt& attempt, const PutOff& put_off) {
        const Worth worth(attempt.worth.days.size(), attempt.worth.mixings, attempt.worth.waiting);
        waiting_.emplace(worth, std::pair(attempt, put_off));
    }

    static MixPlan said(const MixAttempt& attempt, bool proven) {
        MixPlan plan = attempt.plan;
        plan.proven = proven;
        if (!attempt.worth.proven)
            plan.notes.emplace_back(
                "there are too many sets of days to go through them all: the days are as few as can "
                "be, and fewer mixings on as many days are not ruled out");
        else if (!proven)
            plan.notes.emplace_back(
                "some of it is mixed later than it could be, since bottles are wanting until then; not every way to "
                "share them out was tried");
        return plan;
    }

    const MixTask& task_;
    std::multimap<Worth, std::pair<MixAttempt, PutOff>> waiting_;
    std::set<PutOff> seen_;
    std::size_t left_ = 0;  ///< attempts
};

}  // namespace

const MixedSolution* MixPlan::of(Id solution) const {
    const auto found = std::ranges::find(solutions, solution, &MixedSolution::solution);
    return found == solutions.end() ? nullptr : &*found;
}

MixPlan plan_mixing(const Model& model, const std::vector<Wanted>& wanted, Day first, Id bench) {
    const std::vector<check::Bottle> none;
    const MixTask task{model, wanted, HeldBatches(model, first), first,
                       bench == check::none ? none : model.benches[bench].bottles};
    return FittingToBottles(task).run();
}

}  // namespace scruple::plan
