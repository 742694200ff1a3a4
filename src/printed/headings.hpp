// SPDX-License-Identifier: MIT
// Lines of a page that give no amount and yet say how others are read: what stands over the columns, and which
// solution begins.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// `Avoirdupois   Metric`, `British (oz.) | U.S. | Grammes`: one a column; none where the line is another.
[[nodiscard]] std::vector<Heading> headings_in(std::string_view line);

struct Label {
    Solution solution;
    std::string_view rest;  ///< of the line: `Water 10 oz` of `A.—Water 10 oz`
};

/// `Solution A`, `No. 1`, `B.`, `Stock solution`, `Working solution`.
[[nodiscard]] std::optional<Label> label_in(std::string_view line);

/// `a` of `stock solution A`, `` of `stock solution`; nothing where the words name no solution.
[[nodiscard]] std::optional<std::string> solution_named(std::string_view words);

}  // namespace scruple::printed
