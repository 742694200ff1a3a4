// SPDX-License-Identifier: MIT
// How the solutions of a page are mixed for use.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// `For use take 1 part A, 1 part B and 2 parts of water`, `equal parts of A and B`, `dilute with 3 parts of water`.
/// `unnamed` is what `1 part` is of where no name stands by it. Nothing where the line says anything else, names a
/// solution that is not there, or measures one thing by volume and another otherwise.
[[nodiscard]] std::optional<Mixture> mixture_in(std::string_view line, const std::vector<Solution>& solutions,
                                                const Mixture& unnamed);

/// `1 oz A to 1 pint of water`: its parts depend on whose ounces and pints they are.
[[nodiscard]] bool mixes_measures(const Mixture& mixture);

/// The same in parts of its least share, for a reader whose fluid ounces these are; as it is where all has one unit.
[[nodiscard]] Mixture in_one_unit(const Mixture& mixture, Fluid fluid);

/// The solution that words such as `stock solution A` name; nothing where there is none of that name.
[[nodiscard]] std::optional<std::size_t> solution_called(std::string_view words,
                                                         const std::vector<Solution>& solutions);

}  // namespace scruple::printed
