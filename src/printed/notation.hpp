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
    bool in_words = false;   ///< `one`: a figure only before a unit
};

/// The figure that `text` begins with: `6`, `5.7`, `5,7`, `1,000`, `1½`, `1 1/2`, `1-1/2`, `1/4`, `one`; of `2 to 3`
/// and `2-3` the middle. A comma before three digits parts thousands, unless a nought stands before it.
[[nodiscard]] std::optional<Figure> figure_at(std::string_view text);

struct UnitFound {
    UnitWord unit = UnitWord::none;
    std::size_t length = 0;
    Whose whose{};
};

/// The unit that `text` begins with, `grs.`, `fl. oz.`, `c.c.`, with whose it is: `U.S. pint`, `oz. (imp.)`; length 0
/// where it begins with none.
[[nodiscard]] UnitFound unit_at(std::string_view text);

struct WhoseFound {
    Whose whose{};
    std::size_t length = 0;
};

/// The word that `text` begins with and that says whose measure it is, in parentheses or not.
[[nodiscard]] WhoseFound whose_at(std::string_view text);

}  // namespace scruple::printed
