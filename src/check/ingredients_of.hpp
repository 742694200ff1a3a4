// SPDX-License-Identifier: MIT
// Which solutions a solution is made of. Nothing here recurses: chains may be thousands long.
#pragma once

#include <functional>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// The solutions that go into a section directly, in the order of its lines, with the line that says so.
struct Part {
    Id solution;
    const Addition* addition;
};
[[nodiscard]] std::vector<Part> parts_of(const Section& section);
/// From its lines alone, for when they have just been read; Section::takes_solutions from then on.
[[nodiscard]] bool any_line_takes_solution(const Section& section);

/// Everything a section is made of, itself last, each after what it is made of itself; what is `done`
/// already is left out with all below it. What goes round in a circle is cut where it closes.
[[nodiscard]] std::vector<Id> made_of(const Model& model, Id section, const std::function<bool(Id)>& done);

/// Solutions among these, and what they are made of, that go into themselves: for each knot of them one way round, `A`,
/// `B`, … where the last takes the first again. In time linear in the number of lines of those sections that take
/// solutions at all.
[[nodiscard]] std::vector<std::vector<Id>> circles(const Model& model, const std::vector<Id>& sections);

}  // namespace scruple::check
