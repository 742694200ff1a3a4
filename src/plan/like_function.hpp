// SPDX-License-Identifier: MIT
// Whether one chemical does what another does: the one rule for what is only named and for what is weighed on demand.
#pragma once

#include <optional>
#include <string_view>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// A salt of sodium or potassium: its anion, and how many of it a mole brings.
struct Salt {
    std::string_view anion;
    int anions = 0;
};
[[nodiscard]] std::optional<Salt> salt_of(const check::Chemical& chemical);

struct Likeness {
    /// From the nearest to the farthest.
    enum class By : std::uint8_t {
        anion,   ///< the sodium and the potassium salt of one acid
        family,  ///< alkalis of one family
        use      ///< an `acts as` word in both
    } by;
    std::string_view word;  ///< `Br-`; `mild`; `restrainer`
};

/// The nearest that holds. Alkalis stand in for one another inside a family only (common practice, no source), whatever
/// words they share.
[[nodiscard]] std::optional<Likeness> likeness_of(const check::Chemical& a, const check::Chemical& b);

/// The first `acts as` word that stands in both; empty where there is none.
[[nodiscard]] std::string_view shared_use(const check::Chemical& a, const check::Chemical& b);

/// `mild`, `carbonate`, `caustic`; empty for what is in no family of alkalis.
[[nodiscard]] std::string_view alkali_family(const check::Chemical& chemical);

}  // namespace scruple::plan
