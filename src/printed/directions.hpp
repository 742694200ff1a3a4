// SPDX-License-Identifier: MIT
// How the solutions of a page are mixed for use.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// `For use take 1 part A, 1 part B and 2 parts of water`, `equal parts of A and B`, `dilute with 3 parts of water`.
/// Nothing where the line says anything else, names a solution that is not there, or mixes kinds of units.
[[nodiscard]] std::optional<Mixture> mixture_in(std::string_view line, const std::vector<Solution>& solutions);

/// The solution that words such as `stock solution A` name; nothing where there is none of that name.
[[nodiscard]] std::optional<std::size_t> solution_called(std::string_view words,
                                                         const std::vector<Solution>& solutions);

}  // namespace scruple::printed
