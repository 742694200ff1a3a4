// SPDX-License-Identifier: MIT
// The solution that a line belongs to, and what is in it so far.
#pragma once

#include <optional>

#include "scruple/check/ph.hpp"
#include "scruple/check/volumes.hpp"
#include "view.hpp"

namespace scruple::server {

/// A line of a solution, by its indices in the model.
struct LineOf {
    check::Id section = check::none;
    std::uint32_t line = 0;
};

[[nodiscard]] std::optional<LineOf> line_at(const check::Model& model, text::FileId file, std::uint32_t statement);

/// `0.0122 mol`; empty where there is none to say.
[[nodiscard]] std::string moles_of(const check::Model& model, const check::Addition& addition);

/// What is in the vessels when the line is done, in the volume that they hold then: as a solution of its own. Nullopt
/// where that volume is not known.
[[nodiscard]] std::optional<check::Section> so_far(const check::Model& model, const LineOf& at);

/// `pH 9.8 (9.6 to 10.0)`, or that none is given and why.
[[nodiscard]] std::string ph_words(const check::Model& model, const std::vector<check::Content>& contents);

}  // namespace scruple::server
