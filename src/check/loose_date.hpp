// SPDX-License-Identifier: MIT
// Dates as people write them elsewhere, to say how they are written here.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scruple::check {

/// `5/11/2026` at the beginning of a line: how many bytes it takes (0 where the line begins with no date), and the days
/// it may mean, as year-month-day: two for `5/11/2026`, none where the year is not said.
struct LooseDate {
    std::size_t length = 0;
    std::vector<std::string> days{};
};
[[nodiscard]] LooseDate read_loose_date(std::string_view line);

}  // namespace scruple::check
