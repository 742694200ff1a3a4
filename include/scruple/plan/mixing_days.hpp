// SPDX-License-Identifier: MIT
// On which days to mix what, so that nothing is used past its time: days and amounts alone, no recipes.
#pragma once

#include <cstdint>
#include <vector>

#include "scruple/quantity/exact.hpp"

namespace scruple::plan {

/// A day on which a solution is needed, and the earliest on which it may have been mixed for that.
struct MixingWindow {
    std::int32_t earliest = 0, needed = 0;
};

/// What is needed of one solution; windows in the order of their days, the earliest never going back.
struct MixingNeeds {
    std::vector<MixingWindow> windows;
};

struct MixingDays {
    std::vector<std::int32_t> days;  ///< in their order
    std::int64_t mixings = 0;        ///< solutions mixed, over all days
    std::int64_t waiting = 0;        ///< days between mixing and use, over all windows
    bool proven = true;              ///< false where there were too many sets of days to go through them all
};

/// Of days on which something is needed: the fewest that meet every window; of those, the ones with the fewest
/// mixings; then the ones with the least waiting; then the latest. All exactly, unless `proven` says otherwise.
[[nodiscard]] MixingDays fewest_mixing_days(const std::vector<MixingNeeds>& needs);

/// For each window the day on which it is mixed: the fewest of `days` that do; of those, the ones with the least
/// waiting between mixing and use. A window that none of the days meets is mixed for on its day.
[[nodiscard]] std::vector<std::int32_t> mixed_for(const MixingNeeds& needs, const std::vector<std::int32_t>& days);

}  // namespace scruple::plan
