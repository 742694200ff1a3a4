// SPDX-License-Identifier: MIT
// The shortest timeline of an evening, against trying at each minute all that hands can begin, and waiting too.
#include "scruple/plan/timeline.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>

#include "support/sanitized.hpp"

namespace scruple::test {
namespace {

using plan::Minutes;
using plan::TimedJob;
using plan::Timeline;

constexpr Minutes none_yet = 100'000;

/// Minute by minute: each next step that could begin now is begun, or nothing is. Knows no order and no bound.
class EveryMinute {
  public:
    EveryMinute(const std::vector<TimedJob>& jobs, std::size_t vessels)
        : jobs_(jobs), vessels_(vessels), next_(jobs.size()), ready_(jobs.size()) {}

    Minutes shortest(Minutes latest) {
        latest_ = latest;
        best_ = none_yet;
        go_on(0);
        return best_;
    }

  private:
    void go_on(Minutes now) {
        if (all_done()) {
            Minutes end = 0;
            for (const Minutes ready : ready_) end = std::max(end, ready);
            if (fresh(end)) best_ = std::min(best_, end);
            return;
        }
        if (now >= std::min(latest_, best_)) return;
        for (std::size_t job = 0; job < jobs_.size(); ++job) {
            if (!may_begin(job, now)) continue;
            const auto& step = jobs_[job].steps[next_[job]];
            const Minutes before = ready_[job];
            ready_[job] = now + step.hands + step.alone;
            ++next_[job];
            go_on(now + step.hands);
            --next_[job];
            ready_[job] = before;
        }
        go_on(now + 1);
    }

    [[nodiscard]] bool may_begin(std::size_t job, Minutes now) const {
        if (done(job) || ready_[job] > now) return false;
        const auto& step = jobs_[job].steps[next_[job]];
        if (next_[job] > 0 && step.within && now - ready_[job] > *step.within) return false;
        if (next_[job] == 0 && in_vessels() >= vessels_) return false;
        return std::ranges::all_of(step.after, [&](auto other) { return done(other) && ready_[other] <= now; });
    }

    [[nodiscard]] bool done(std::size_t job) const { return next_[job] == jobs_[job].steps.size(); }
    [[nodiscard]] bool all_done() const {
        for (std::size_t job = 0; job < jobs_.size(); ++job)
            if (!done(job)) return false;
        return true;
    }
    [[nodiscard]] std::size_t in_vessels() const {
        std::size_t count = 0;
        for (std::size_t job = 0; job < jobs_.size(); ++job)
            count += next_[job] > 0 && (!done(job) || jobs_[job].keeps_vessel) ? 1 : 0;
        return count;
    }
    [[nodiscard]] bool fresh(Minutes end) const {
        for (std::size_t job = 0; job < jobs_.size(); ++job)
            if (jobs_[job].fresh_for && end - ready_[job] > *jobs_[job].fresh_for) return false;
        return true;
    }

    const std::vector<TimedJob>& jobs_;
    std::size_t vessels_;
    std::vector<std::size_t> next_;
    std::vector<Minutes> ready_;
    Minutes latest_ = 0, best_ = none_yet;
};

struct Invented {
    bool within = false, after = false, fresh = false;
};

std::vector<TimedJob> invented(std::mt19937& random, std::size_t count, const Invented& what) {
    const auto up_to = [&](unsigned most) { return static_cast<Minutes>(random() % (most + 1)); };
    std::vector<TimedJob> jobs(count);
    for (std::size_t job = 0; job < count; ++job) {
        jobs[job].steps.resize(1 + random() % 3);
        for (auto& step : jobs[job].steps) {
            step.hands = 1 + up_to(2);
            step.alone = up_to(1) == 0 ? 0 : up_to(4);
            if (what.within && up_to(2) == 0) step.within = up_to(1);
            if (what.after && job > 0 && up_to(3) == 0) step.after.push_back(random() % job);
        }
        jobs[job].keeps_vessel = up_to(2) == 0;
        jobs[job].steps.back().alone = 0;
        if (what.fresh && up_to(2) == 0) jobs[job].fresh_for = up_to(4);
    }
    return jobs;
}

/// Nothing that was asked for is broken.
void check_kept(const std::vector<TimedJob>& jobs, const Timeline& timeline, std::size_t vessels) {
    std::map<Minutes, Minutes> hands;
    std::vector<Minutes> done;
    for (std::size_t job = 0; job < jobs.size(); ++job) {
        Minutes ready = 0;
        for (std::size_t i = 0; i < jobs[job].steps.size(); ++i) {
            const auto& step = jobs[job].steps[i];
            const Minutes start = timeline.starts[job][i];
            CHECK(start >= ready);
            if (i > 0 && step.within) CHECK(start - ready <= *step.within);
            CHECK(hands.emplace(start, start + step.hands).second);
            ready = start + step.hands + step.alone;
        }
        done.push_back(ready);
        CHECK(ready <= timeline.minutes);
        if (jobs[job].fresh_for && timeline.fresh) CHECK(timeline.minutes - ready <= *jobs[job].fresh_for);
    }
    Minutes free = 0;
    for (const auto& [from, to] : hands) {
        CHECK(from >= free);
        free = to;
    }
    for (std::size_t job = 0; job < jobs.size(); ++job)
        for (std::size_t i = 0; i < jobs[job].steps.size(); ++i)
            for (const std::size_t other : jobs[job].steps[i].after) CHECK(timeline.starts[job][i] >= done[other]);
    const auto in = plan::vessels_of(jobs, timeline);
    for (std::size_t a = 0; a < jobs.size(); ++a) {
        CHECK(in[a] < vessels);
        for (std::size_t b = 0; b < jobs.size(); ++b) {
            if (a == b || in[a] != in[b] || timeline.starts[a].front() > timeline.starts[b].front()) continue;
            CHECK_FALSE(jobs[a].keeps_vessel);
            CHECK(done[a] <= timeline.starts[b].front());
        }
    }
}

void compare(const Invented& what, unsigned seed, int rounds) {
    std::mt19937 random(seed);
    for (int round = 0; round < rounds; ++round) {
        CAPTURE(round);
        const auto jobs = invented(random, 2 + random() % 2, what);
        const std::size_t vessels = plan::least_vessels(jobs) + random() % 2;
        const Timeline found = plan::shortest_timeline(jobs, vessels);
        const Minutes serial = plan::one_after_the_other(jobs);
        const Minutes best = EveryMinute(jobs, vessels).shortest(serial + 8);
        check_kept(jobs, found, vessels);
        CHECK(found.fresh == (best < none_yet));
        if (!found.fresh) continue;
        CHECK(found.proven);
        CHECK(found.minutes == best);
        if (!what.fresh) CHECK(found.minutes <= serial);
    }
}

TEST_CASE("no way to begin steps minute by minute is done sooner") {
    compare({}, 1, as_many_as_sensible(150));
}

TEST_CASE("nor where a step must follow another soon, or waits for another job") {
    compare({true, false, false}, 2, as_many_as_sensible(150));
    compare({false, true, false}, 3, as_many_as_sensible(150));
    compare({true, true, false}, 4, as_many_as_sensible(150));
}

TEST_CASE("nor where what does not stay fresh is to be done near the end") {
    compare({false, false, true}, 5, as_many_as_sensible(30));
    compare({true, true, true}, 6, as_many_as_sensible(30));
}

TEST_CASE("an evening of many jobs is never longer than one after the other, and breaks nothing") {
    std::mt19937 random(11);
    for (int round = 0; round < 20; ++round) {
        const auto jobs = invented(random, 6 + random() % 6, {true, true, false});
        const std::size_t vessels = std::max<std::size_t>(plan::least_vessels(jobs), 3);
        const Timeline found = plan::shortest_timeline(jobs, vessels);
        check_kept(jobs, found, vessels);
        CHECK(found.minutes <= plan::one_after_the_other(jobs));
    }
}

TEST_CASE("what waits by itself is waited out at other work") {
    const std::vector<TimedJob> jobs{{{{2, 10, {}, {}}, {3, 0, {}, {}}}, false, {}}, {{{5, 0, {}, {}}}, false, {}}};
    CHECK(plan::one_after_the_other(jobs) == 20);
    CHECK(plan::shortest_timeline(jobs, 2).minutes == 15);
    CHECK(plan::shortest_timeline(jobs, 1).minutes == 20);
}

TEST_CASE("no jobs take no time") {
    CHECK(plan::shortest_timeline({}, 1).minutes == 0);
}

}  // namespace
}  // namespace scruple::test
