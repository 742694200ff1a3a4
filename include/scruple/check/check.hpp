// SPDX-License-Identifier: MIT
// From syntax trees to a checked workspace and everything that is wrong with it.
#pragma once

#include <span>

#include "scruple/check/model.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::check {

/// What goes in: sources and trees of the same length. The first `built_in` of them are the
/// library that ships with the program; a user's block of the same name overrides one of its blocks.
struct Workspace {
    std::span<const text::Source> sources;
    std::span<const syntax::Tree> trees;
    std::size_t built_in = 0;
};

struct Checked {
    Model model;
    std::vector<diagnostics::Diagnostic> diagnostics;  ///< sorted, each fault once
};

/// Checks the whole workspace, on as many threads as `workers` says (0: one a core).
[[nodiscard]] Checked check(const Workspace& workspace, unsigned workers = 0);

}  // namespace scruple::check
