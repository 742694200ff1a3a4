// SPDX-License-Identifier: MIT
// What solutions usually hold, and how far a figure is from it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "scruple/check/model.hpp"
#include "ways.hpp"

namespace scruple::printed {

enum class Role : std::uint8_t {
    unknown,
    film_developer,
    paper_developer,
    developer,  ///< for film or paper
    stop_bath,
    fixer,
    clearing_bath,
    bleach,
    toner,
    reducer,
    intensifier,
    hardener
};

/// By what the page says it is for, else by what is on it: a developing agent makes a developer of it.
[[nodiscard]] Role role_of(const check::Model& model, const check::PrintedPage& typed, const Layout& layout);

/// `film developers`
[[nodiscard]] std::string_view in_plural(Role role);

struct Range {
    double least = 0, most = 0;
};

/// g/l of a form in the solution in use; nothing where the table says nothing.
[[nodiscard]] std::optional<Range> usual_range(const check::Model& model, Role role, check::Id chemical,
                                               check::Id form);

/// pH of the solution in use, of common practice, no source; nothing where solutions of that kind are of any.
[[nodiscard]] std::optional<Range> usual_ph(Role role);

/// How far outside, as a natural logarithm: 0 within, below 0 for too little.
[[nodiscard]] double outside(const Range& range, double value);

/// The cost of that: that of a deviation of a factor of two, and never more than that of a slip.
[[nodiscard]] double cost_of_unusual(const Range& range, double value);

}  // namespace scruple::printed
