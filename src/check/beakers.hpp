// SPDX-License-Identifier: MIT
// What is in each vessel of a solution, line by line.
#pragma once

#include <functional>
#include <span>

#include "contents_table.hpp"
#include "encounter.hpp"

namespace scruple::check {

/// Who looks at the moments of a vessel.
struct MomentViewer {
    /// Whether it matters that these are together, in whatever amounts; what does not is not worked out.
    std::function<bool(std::span<const Content>)> minds;
    std::function<void(const Moment& mix, const Place& place)> show;
};

/// Walks the lines of a section for one variant, second vessels included, and shows each moment at which something
/// goes into something: the first hundredth of it, a tenth, and the whole. Optional lines go in, too.
/// `table` has what the solutions that go in hold.
void each_moment(const Model& model, const Section& section, std::size_t variant, ContentsTable& table,
                 const MomentViewer& viewer);

}  // namespace scruple::check
