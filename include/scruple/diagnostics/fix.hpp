// SPDX-License-Identifier: MIT
// What a diagnostic says to write, as edits that a program can make.
#pragma once

#include <string>
#include <vector>

#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::diagnostics {

/// `text` in the place of `span`; empty where the span is to go.
struct Fix {
    text::Span span;
    std::string text;
};

/// One for each reading that the diagnostic offers to write, in its order; none where it says in words what to do. Made
/// from `write`, so that the edit is what people read. None accepts a hazard: that takes a reason of one's own.
[[nodiscard]] std::vector<Fix> fixes_of(const Diagnostic& diagnostic, const text::Source& source);

/// `Write oz av`, `Take 500 ml away`
[[nodiscard]] std::string words_of(const Fix& fix, const text::Source& source);

}  // namespace scruple::diagnostics
