// SPDX-License-Identifier: MIT
// Which of a solution's keeping times holds for a bottle as full as it is now.
#pragma once

#include <optional>
#include <string>

#include "scruple/check/model.hpp"

namespace scruple::plan {

struct UseBy {
    std::optional<check::Day> day;
    std::string because;  ///< `6 weeks half full`; where there is no day, why
};

/// `fill` is what is left of what was mixed. Up to a tenth gone counts as full; below that, the time for half full
/// holds, since the air has got at it. (Common practice, no source.) Times that are said for neither hold always, but
/// for those said for a place such as `in the tray`.
[[nodiscard]] UseBy use_by(const check::Section& section, check::Day mixed_on, const check::Exact& fill);

}  // namespace scruple::plan
