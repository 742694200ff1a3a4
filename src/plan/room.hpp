// SPDX-License-Identifier: MIT
// What the lines of a solution take up, and where its mark is.
#pragma once

#include <optional>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// ml that all lines but those that fill up bring into the finished solution, solids by estimate; every second vessel
/// counts as poured in.
[[nodiscard]] check::Exact room_of_lines(const check::Model& model, const check::Section& section, std::size_t variant);

/// The volume to which the main vessel is made up after a line (an index into the section's lines); nullopt where
/// nothing says `to make` there.
[[nodiscard]] std::optional<check::Exact> mark_after(const check::Section& section, std::size_t line,
                                                     std::size_t variant);

}  // namespace scruple::plan
