// SPDX-License-Identifier: MIT
// A checked library as bytes. The program's own is checked when the program is built, and at a start its model is taken
// out of these bytes, which costs a small part of reading and checking it again.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "scruple/check/check.hpp"

namespace scruple::check {

/// The model of a library (chemicals, conversions, film formats, meetings), checked by itself from `sources`. Throws
/// std::logic_error where there is more in it than that, or a number that two words do not hold.
[[nodiscard]] std::string packed(const Model& library, std::span<const text::Source> sources);

/// The model again. `bytes` are those of packed() of the same build, and must outlive the model, as the sources must,
/// which are the same as then. Other bytes give a model that means nothing.
[[nodiscard]] Model unpacked(std::string_view bytes, std::span<const text::Source> sources);

/// Whether a file behind the library does so. A chemical changes what other lines mean, the library's too.
[[nodiscard]] bool declares_a_chemical(const Workspace& workspace);

/// What check() gives for a workspace that declares no chemical, from the model of its library alone. The library's
/// trees are not looked at.
[[nodiscard]] Checked check_behind(Model library, const Workspace& workspace, unsigned workers = 0);

}  // namespace scruple::check
