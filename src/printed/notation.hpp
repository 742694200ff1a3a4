// SPDX-License-Identifier: MIT
// Figures and units as books print them.
#pragma once

#include <optional>
#include <string_view>

#include "scruple/printed/page.hpp"

namespace scruple::printed {

struct Figure {
    Exact value{};
    Exact step{};
    std::size_t length = 0;  ///< bytes read
};

/// The figure that `text` begins with: `6`, `5.7`, `5,7`, `1½`, `1 1/2`, `1-1/2`, `1/4`; of `2 to 3` and `2-3` the
/// middle.
[[nodiscard]] std::optional<Figure> figure_at(std::string_view text);

struct UnitFound {
    UnitWord unit = UnitWord::none;
    std::size_t length = 0;
};

/// The unit that `text` begins with, `grs.`, `fl. oz.`, `c.c.`; length 0 where it begins with none.
[[nodiscard]] UnitFound unit_at(std::string_view text);

}  // namespace scruple::printed
