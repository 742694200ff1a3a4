// SPDX-License-Identifier: MIT
// What films and sheets take of a bath, by what its recipe says of capacity.
#pragma once

#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// ml for one use, what it is for and how it was found: `6 films 135`, `6 × 250 ml`.
struct Draw {
    check::Exact ml;
    std::string what;
    std::string how;
};

/// What the bath itself gives up to each of the uses of one day. Where its capacity is not known, a batch as
/// written for the day, and a warning. Of a replenished bath nothing.
[[nodiscard]] std::vector<Draw> bath_draws(const check::Model& model, check::Id bath,
                                           const std::vector<check::Use>& uses, std::vector<std::string>& warnings);

/// What a replenished bath is topped up with; none for other baths.
struct TopUp {
    check::Id solution = check::none;
    std::vector<Draw> draws;
};
[[nodiscard]] TopUp top_up(const check::Model& model, check::Id bath, const std::vector<check::Use>& uses,
                           std::vector<std::string>& warnings);

/// The replenisher of a bath: its recipe's section of that name, else the bath itself.
[[nodiscard]] check::Id replenisher_of(const check::Model& model, check::Id bath);

/// A bath that is kept from day to day must fill the tank at once: ml for the uses of one day, where the capacity
/// states a volume. 0 for a one-shot bath.
[[nodiscard]] check::Exact fill_of(const check::Model& model, check::Id bath, const std::vector<check::Use>& uses);

/// ml of a bath that films and sheets take along into the next one; 0 where its recipe does not say.
[[nodiscard]] check::Exact carried_over(const check::Model& model, check::Id bath, const std::vector<check::Use>& uses);

/// How much longer a bath that is kept takes after so much has gone through it.
struct Lengthening {
    check::Exact percent, seconds;
    [[nodiscard]] bool any() const { return percent > 0 || seconds > 0; }
    Lengthening& operator+=(const Lengthening& more) {
        percent += more.percent;
        seconds += more.seconds;
        return *this;
    }
};
[[nodiscard]] Lengthening lengthening(const check::Model& model, check::Id bath, const std::vector<check::Use>& uses);
/// `40 % longer`, `90 s longer`, `40 % and 90 s longer`
[[nodiscard]] std::string longer_words(const Lengthening& longer);

[[nodiscard]] check::Exact sum_of(const std::vector<Draw>& draws);

}  // namespace scruple::plan
