// SPDX-License-Identifier: MIT
// What a call wants drawn, and on what.
#pragma once

#include <optional>

#include "call.hpp"
#include "scruple/paper/paper.hpp"

namespace scruple::cli {

/// Where --as names a picture or a PDF: on the sheets of --paper, dated with --mixed or SOURCE_DATE_EPOCH. Throws Stop
/// for a sheet that there is none of, and where the bytes would go to a terminal.
[[nodiscard]] std::optional<paper::Printing> asked_printing(const Call& call);

/// A PDF on the sheets of --paper, dated in the same way.
[[nodiscard]] paper::Printing as_pdf(const Call& call);

}  // namespace scruple::cli
