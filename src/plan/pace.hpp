// SPDX-License-Identifier: MIT
// How long things take at the bench, where neither the recipe nor the bench says so.
#pragma once

#include <string>
#include <vector>

#include "scruple/plan/evening.hpp"

namespace scruple::plan {

/// Minutes, 69 days: what takes longer belongs to no evening. A longer step comes out as one minute more than this.
inline constexpr Minutes longest_in_an_evening = 100'000;
/// Of an evening. More than so many and one are not made for a card.
inline constexpr std::size_t most_of_an_evening = 1000;

/// In minutes. Assumptions of this program: no source has them, and nobody has timed them on a given bench.
struct Pace {
    Minutes weigh = 2;       ///< one chemical on the balance, and into the vessel
    Minutes measure = 1;     ///< one liquid; a warm one is put on, too
    Minutes slowly = 3;      ///< more, for what goes in slowly
    Minutes stir_clear = 5;  ///< stirring to which no time is given
    Minutes filter = 5;
    Minutes act = 2;               ///< whatever else a line tells to do
    Minutes vessel = 1;            ///< to take, pour from or set aside another one
    Minutes make_up = 2;           ///< to the mark
    Minutes stir_late = 2;         ///< how much later than every so often something may be stirred
    Minutes bottle = 2;            ///< fill one and label it; the vessel is rinsed meanwhile
    Minutes cool = 10;             ///< where it is not known from how warm
    double cool_per_degree = 0.5;  ///< in a bowl of cold water
    double watts = 1000;           ///< that go into what is warmed
    double warm_from = 25;         ///< °C; up to that it comes from the tap
    double warm = 30;              ///< °C; from there on the next step …
    Minutes while_warm = 5;        ///< … follows within this time
};

/// With what the bench says of itself.
[[nodiscard]] Pace pace_of(const check::Bench* bench);

/// One line of a card as a step of the evening, and what no card says in front of it and after it.
struct PacedStep {
    Work work;
    TimedStep timed;
};

/// `bottles`: how many are filled at the end; 0: what was mixed stays in its vessel.
[[nodiscard]] std::vector<PacedStep> paced(const Card& card, const Pace& pace, std::int64_t bottles);

/// What is said of all that under a timeline.
[[nodiscard]] std::vector<std::string> pace_words(const Pace& pace);

}  // namespace scruple::plan
