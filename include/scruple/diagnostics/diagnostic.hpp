// SPDX-License-Identifier: MIT
// What is wrong, where, and what to write instead.
#pragma once

#include <array>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/text/source.hpp"

namespace scruple::diagnostics {

enum class Severity : std::uint8_t { error, warning, advice };

/// Every kind there is; table.inc declares each with its severity, wording and explanation.
enum class Kind : std::uint8_t {
#define SCRUPLE_KIND(id, name, severity, wording, write, explanation) id,
#include "scruple/diagnostics/table.inc"
#undef SCRUPLE_KIND
};

struct KindInfo {
    Kind kind;
    std::string_view name;  ///< in words, as in `form-not-stated`
    Severity severity;
    std::string_view wording;      ///< fmt text with {0} {1} … for the arguments
    std::string_view write;        ///< what to write instead, same arguments; may be empty
    std::string_view explanation;  ///< the long text of `scruple help NAME`
};

[[nodiscard]] const KindInfo& info(Kind kind);
[[nodiscard]] const KindInfo* find_kind(std::string_view name);
[[nodiscard]] const std::vector<KindInfo>& all_kinds();
[[nodiscard]] std::string_view name_of(Severity severity);

/// Another place that belongs to the same fault, such as the first of two definitions.
struct Related {
    text::FileId file = 0;
    text::Span span;
    std::string note;
};

struct Diagnostic {
    Kind kind;
    text::FileId file = 0;
    text::Span span;
    std::string message;  ///< the wording with its arguments filled in
    std::string write;    ///< what to write instead; empty where nothing can be proposed
    std::vector<Related> related;
};

[[nodiscard]] Diagnostic make(Kind kind, text::FileId file, text::Span span,
                              std::initializer_list<std::string_view> arguments = {});

/// The best spelling among `known` for a mistyped `word`, or empty when none is near.
[[nodiscard]] std::string nearest(std::string_view word, const std::vector<std::string_view>& known);

/// Sorted by file, place and kind, each fault once.
void sort_and_settle(std::vector<Diagnostic>& diagnostics);

[[nodiscard]] bool any_error(const std::vector<Diagnostic>& diagnostics);

}  // namespace scruple::diagnostics
