// SPDX-License-Identifier: MIT
// What the order of work asks of a chemical, by the words of its `acts as` line.
#pragma once

#include <cstdint>
#include <string_view>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// A set of them is a sum of their bits.
enum Purpose : std::uint16_t {
    sulfite = 1,                ///< `preservative`
    acid = 2,                   ///< `acid`, but for one that is too weak to take a thiosulfate apart
    alum = 4,                   ///< `alum`
    thiosulfate = 8,            ///< `fixing agent`
    alkali = 16,                ///< `alkali`
    caustic = 32,               ///< `caustic`: heats as it dissolves
    buffer = 64,                ///< `buffer`
    kept_by_sulfite = 128,      ///< `agent kept by sulfite`: the air takes it in plain water
    hindered_by_sulfite = 256,  ///< `agent hindered by sulfite`: hardly dissolves in a strong solution of it
};
using Purposes = std::uint16_t;

/// From its words; whoever asks again and again finds them in `Chemical::purposes`.
[[nodiscard]] Purposes purposes_of(const Chemical& chemical);

/// Whether a set has all of another.
[[nodiscard]] constexpr bool has(Purposes set, Purposes all) {
    return (set & all) == all;
}

}  // namespace scruple::check
