// SPDX-License-Identifier: MIT
// Diagnostics as people and as programs read them.
//
// The voice of a message: short, plain, in the present tense. It says what is wrong with what
// stands in `backticks`, not what anybody did; it gives no blame, and ends without a full stop.
// What to write instead goes on from the verb: recipe text in `backticks`, or a few plain words
// where the text cannot be known.
#pragma once

#include <span>
#include <string>

#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::diagnostics {

struct TextStyle {
    bool colour = false;      ///< escapes of ECMA-48; the words carry the meaning without them
    std::size_t limit = 100;  ///< how many are shown; errors go before warnings, warnings before advice
    std::size_t checked = 0;  ///< files that were looked through; told where nothing is said of some of them
};

/// Each with its place, its line with the stretch marked below, what to write instead and related
/// places; then a count of all. Empty where there is nothing to show.
///
///     bench/lantern.scruple:12.5: error: `sodium carbonate` is sold in several forms [form-not-stated]
///         sodium carbonate                    40 g
///         ‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾‾
///         write  `sodium carbonate (monohydrate)   40 g`
///
/// `file` of a diagnostic is an index into `sources`; one that is past their end has no place.
/// Expects the order of sort_and_settle. Ends with a line end.
[[nodiscard]] std::string as_text(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                                  const TextStyle& style = {});

/// All of them, as a JSON list of {"file","line","column","severity","kind","message","write"};
/// lines and columns count from 1, and are 0 with an empty "file" where there is no place.
[[nodiscard]] std::string as_json(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources);

/// All of them as one SARIF 2.1.0 log, with what they offer to write as fixes. `version`: the program's.
[[nodiscard]] std::string as_sarif(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                                   std::string_view version);

/// All of them as JUnit XML: a test case for each source from `first` on, and for what is found elsewhere.
[[nodiscard]] std::string as_junit(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                                   std::size_t first);

}  // namespace scruple::diagnostics
