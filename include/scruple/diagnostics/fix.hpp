// SPDX-License-Identifier: MIT
// What a diagnostic says to write, as edits that a program can make.
#pragma once

#include <string>
#include <vector>

#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::diagnostics {

/// `text` in the place of `span`.
struct Fix {
    text::Span span;
    std::string text;
};

/// One for each reading that the diagnostic offers to write, in its order; none where it says in words what to do. Made
/// from `write` alone, so that the edit is what people read.
[[nodiscard]] std::vector<Fix> fixes_of(const Diagnostic& diagnostic, const text::Source& source);

}  // namespace scruple::diagnostics
