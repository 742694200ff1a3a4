// SPDX-License-Identifier: MIT
// Reads one block, whatever it is, into its place in the model.
#pragma once

#include "passes.hpp"

namespace scruple::check {

/// Whether a block of the library has not been overridden by one of the user's.
[[nodiscard]] bool still_meant(const Model& model, const Block& block);

/// What lines of other blocks depend on. `has_parts`: a recipe with solutions of its own below, which may be nothing
/// else.
void prepare_block(BlockContext context, bool has_parts, Model& model);

/// Its lines, but for chemicals and what has been prepared; those of a log go into `log`.
void read_block(BlockContext context, Model& model, std::vector<LogEntry>& log);

}  // namespace scruple::check
