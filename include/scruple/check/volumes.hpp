// SPDX-License-Identifier: MIT
// The running volume of a solution, line by line.
#pragma once

#include <vector>

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// What is in the main vessel after a line.
struct Level {
    Exact liquid_ml;     ///< what was measured in as liquid
    Exact with_room_ml;  ///< and the room that dissolved solids take, by estimate
};

struct Filling {
    std::vector<Level> after;            ///< one a line of the section
    std::uint32_t made_up_at = none;     ///< the last `to make` line of the main vessel
    Exact made_ml;                       ///< its volume, or the estimated sum where there is none
    std::uint32_t poured_out_at = none;  ///< the first line that pours more from a vessel than is in it
};

/// Walks the lines of a section for one variant, second vessels included.
[[nodiscard]] Filling fill(const Model& model, const Section& section, std::size_t variant);

/// The volume of the last `to make` line of the main vessel; nullopt where there is none.
[[nodiscard]] std::optional<Exact> made_up_to(const Section& section, std::size_t variant);
/// Filling::made_ml alone; the lines are only walked where no `to make` says it.
[[nodiscard]] Exact made_ml(const Model& model, const Section& section, std::size_t variant);

}  // namespace scruple::check
