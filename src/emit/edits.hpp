// SPDX-License-Identifier: MIT
// Places of recipe text that are replaced, and the text with them replaced.
#pragma once

#include <string>
#include <vector>

#include "scruple/text/source.hpp"

namespace scruple::emit {

struct Edit {
    text::Span span;  ///< empty: put in before what stands there
    std::string text;
};

/// A stretch of the source with its edits, in any order. Of two that begin at one place the first counts, unless what
/// it replaces is empty.
[[nodiscard]] std::string edited(const text::Source& source, text::Span whole, std::vector<Edit> edits);

}  // namespace scruple::emit
