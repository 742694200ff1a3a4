// SPDX-License-Identifier: MIT
// The ways to read a page, and what an amount comes to under each.
#pragma once

#include <array>

#include "naming.hpp"
#include "scruple/printed/page.hpp"

namespace scruple::printed {

enum class Fluid : std::uint8_t { imperial, us };
enum class Ounce : std::uint8_t { avoirdupois, apothecaries };

inline constexpr std::size_t most_columns = 4;

/// What all lines share.
struct Shared {
    std::array<Fluid, most_columns> fluid{};
    Ounce ounce = Ounce::avoirdupois;
    bool gr_is_gram = false;
    double stronger = 1;  ///< the metric column against the others
    double cost = 0;
};

/// How one line is read.
struct Way {
    bool other_ounce = false;  ///< departs from the page's
    check::Id form = check::none;
    double cost = 0;
};

/// A line's chemical, settled before anything else.
struct Known {
    const Line* line = nullptr;
    Named what;
    bool pure_liquid = false;
    bool liquid = false;  ///< or a solution of what is none
    std::vector<Way> ways;
};

struct Amount {
    double base = 0;  ///< g or ml
    bool by_volume = false;
    std::string words;  ///< `6 oz av`; empty where the language has no such unit
};

/// What a measure of a column comes to. `metric`: whether figures without a unit there are g or ml.
[[nodiscard]] Amount amount_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way,
                               std::size_t column, bool metric);

}  // namespace scruple::printed
