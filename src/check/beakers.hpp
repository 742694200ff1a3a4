// SPDX-License-Identifier: MIT
// What is in each vessel of a solution, line by line.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "contents_table.hpp"
#include "encounter.hpp"

namespace scruple::check {

/// Walks the lines of a section for one variant, second vessels included, and shows each moment at which something
/// goes into something: the first hundredth of it, a tenth, and the whole. Optional lines go in, too.
/// `table` has what the solutions that go in hold.
void each_moment(const Model& model, const Section& section, std::size_t variant, ContentsTable& table,
                 const std::function<void(const Moment& mix, const Place& place)>& show);

}  // namespace scruple::check
