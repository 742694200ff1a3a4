// SPDX-License-Identifier: MIT
// Which solution to mix on which day of a plan, how much of it, and into which bottles.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

struct BottleRow {
    std::int64_t count = 0;
    Figure size;
};

/// One solution mixed on one day.
struct Mixing {
    check::Id solution = check::none;
    std::string name;
    Figure volume;
    bool weighed = false;  ///< else it is diluted or mixed from others
    std::vector<BottleRow> bottles;
    check::Day last_use = 0;           ///< the last day for which it is mixed
    std::optional<check::Day> use_by;  ///< none: it is used on the day
    std::string keeps;                 ///< `5 months full`; why it is mixed on the day, where it is
    std::vector<check::Day> used_on;
    std::string raised;               ///< why it is more than its uses take; else empty
    std::vector<std::string> longer;  ///< of a bath whose times grow: `2026-12-08: 40 % longer`
};

struct MixingDay {
    check::Day day = 0;
    std::vector<Mixing> mixings;  ///< what others are made of comes first
};

struct MixingCalendar {
    std::string plan;
    std::vector<MixingDay> days;  ///< every day on which anything is mixed or diluted
    std::size_t weighing_days = 0, mixings = 0;
    bool proven = true;  ///< that no other days and mixings are fewer
    std::vector<std::string> notes;
};

/// `bench`: whose bottles must do; none: there are bottles enough, of any size.
[[nodiscard]] MixingCalendar mixing_calendar(const check::Model& model, check::Id plan, check::Id bench);

/// How many of which ml: the fewest bottles that hold a volume with the least air in them; of two ways, the larger
/// ones. No two of `bottles` are of one size. Empty where they do not hold it.
[[nodiscard]] std::vector<std::pair<std::int64_t, check::Exact>> bottles_for(const check::Exact& ml,
                                                                             const std::vector<check::Bottle>& bottles);

}  // namespace scruple::plan
