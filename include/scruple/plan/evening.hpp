// SPDX-License-Identifier: MIT
// All that is to be mixed on one day of a plan, as one timeline for one person: one balance, one pair of hands.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/mixing_calendar.hpp"
#include "scruple/plan/timeline.hpp"

namespace scruple::plan {

struct EveningRequest {
    check::Id plan = check::none;
    check::Day day = 0;
    check::Id bench = check::none;         ///< whose instruments and bottles; none: of any size
    std::optional<Minutes> from{};         ///< after midnight; none: minutes are counted from the start
    std::optional<std::size_t> vessels{};  ///< how many there are to mix in; none: as many as it takes
};

struct EveningSolution {
    std::string name;
    Figure volume;
    std::size_t vessel = 0;  ///< from 1
    Minutes begun = 0, ready = 0;
    std::vector<BottleRow> bottles;
    std::string use_within;  ///< `90 min`
    bool stays_in_vessel = false;
};

struct EveningStep {
    std::size_t solution = 0;  ///< of the evening's solutions
    Minutes start = 0, hands = 0;
    Minutes alone = 0;  ///< for which it then goes on by itself
    Work work;          ///< as on its card; n is 0 for what no card says: to warm something, to bottle it
};

struct Evening {
    std::string plan;
    check::Day day = 0;
    std::optional<Minutes> from;
    std::vector<EveningSolution> solutions;  ///< in the order in which they are begun
    std::vector<EveningStep> steps;          ///< by the clock
    Minutes minutes = 0, hands = 0, one_after_the_other = 0;
    std::size_t vessels = 0;  ///< in use at once, at most
    bool proven = true;
    std::vector<Caution> cautions;  ///< of all the cards
    std::vector<HazardRow> hazards;
    std::vector<AcceptedMeeting> accepted;
    std::vector<std::string> assumed, warnings;
};

/// By the mixing calendar of the plan. A Refusal where nothing is mixed on the day, a card cannot be made, or there are
/// too few vessels. Of a recipe with variants, the first.
[[nodiscard]] std::variant<Evening, Refusal> evening(const check::Model& model, const EveningRequest& request);

}  // namespace scruple::plan
