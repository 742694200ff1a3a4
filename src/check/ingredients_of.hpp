// SPDX-License-Identifier: MIT
// Which solutions a solution is made of.
#pragma once

#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// The solutions that go into a section, directly, in the order of its lines; with the place of the line.
struct Part {
    Id solution;
    const Addition* addition;
};
[[nodiscard]] std::vector<Part> parts_of(const Section& section);

/// Everything a section is made of, itself last, each after what it is made of itself.
/// What goes round in a circle is cut where it closes. No recursion: chains may be long.
[[nodiscard]] std::vector<Id> made_of(const Model& model, Id section);

/// The way from a section back to itself, or empty: `A`, `B`, … where the last takes the first again.
[[nodiscard]] std::vector<Id> circle_from(const Model& model, Id section);

/// For every section, whether it lies on a circle.
[[nodiscard]] std::vector<bool> on_a_circle(const Model& model);

}  // namespace scruple::check
