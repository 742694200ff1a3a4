// SPDX-License-Identifier: MIT
// In which order one pair of hands does several jobs, each with steps in their order and times in which it goes on by
// itself: minutes alone, no recipes.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace scruple::plan {

using Minutes = std::int32_t;

struct TimedStep {
    Minutes hands = 1;                 ///< somebody is at it, without a break; 1 and more
    Minutes alone = 0;                 ///< then it goes on by itself, and the job's next step waits
    std::optional<Minutes> within{};   ///< the most that may lie between the step before and this one
    std::vector<std::size_t> after{};  ///< jobs of which the last step must be done
};

struct TimedJob {
    std::vector<TimedStep> steps{};      ///< at least one
    bool keeps_vessel = false;           ///< to the end; else the vessel is free after the last step, which is hands'
    std::optional<Minutes> fresh_for{};  ///< the most that may lie between its last step and the end of all
};

struct Timeline {
    std::vector<std::vector<Minutes>> starts;  ///< by job and step
    Minutes minutes = 0;                       ///< until all is done
    bool fresh = true;                         ///< every `fresh_for` holds
    bool proven = true;                        ///< none is shorter; false where there were too many orders to try
};

/// How many vessels one after the other takes, those that keep theirs last: one for each of them, and one at the start.
[[nodiscard]] std::size_t least_vessels(const std::vector<TimedJob>& jobs);

/// All jobs, each from beginning to end before the next.
[[nodiscard]] Minutes one_after_the_other(const std::vector<TimedJob>& jobs);

/// The shortest with one pair of hands and so many vessels, one a job; with more freshness rather than shorter. By
/// branch and bound over the order in which the steps are begun, each as early as that allows. Never longer than one
/// after the other, but for what keeps jobs fresh. Jobs that wait for each other in a ring, and fewer vessels than the
/// least, are no input.
[[nodiscard]] Timeline shortest_timeline(const std::vector<TimedJob>& jobs, std::size_t vessels);

/// For each job the vessel that it is in, from 0; the lowest that is free when it begins.
[[nodiscard]] std::vector<std::size_t> vessels_of(const std::vector<TimedJob>& jobs, const Timeline& timeline);

}  // namespace scruple::plan
