// SPDX-License-Identifier: MIT
// What every part of the checked workspace is made of: ids, places, intervals, strengths.
#pragma once

#include <cstdint>

#include "scruple/quantity/unit.hpp"
#include "scruple/text/source.hpp"

namespace scruple::check {

using quantity::Exact;
using Id = std::uint32_t;
inline constexpr Id none = 0xFFFFFFFF;

/// Where something is written: the statement's index finds it in the syntax tree again.
struct Place {
    text::FileId file = 0;
    text::Span span;
    std::uint32_t statement = none;
};

/// Exact values; low == high where one value is meant.
struct Interval {
    Exact low{}, high{};
};

/// `20 % w/v`, `28 % w/w`, `1 mol/l`
struct Strength {
    Exact value{};
    quantity::Unit unit = quantity::Unit::none;
    friend bool operator==(const Strength&, const Strength&) = default;
};

}  // namespace scruple::check
