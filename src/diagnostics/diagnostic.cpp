// SPDX-License-Identifier: MIT
#include "scruple/diagnostics/diagnostic.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "scruple/text/printable.hpp"

namespace scruple::diagnostics {
namespace {

// An argument is a piece of somebody's file: long enough to be recognised, short enough for a line.
constexpr std::size_t longest_in_message = 240;
// What is to be pasted in loses more by a cut.
constexpr std::size_t longest_to_write = 240;
constexpr std::size_t most_arguments = 8;

/// Columns of a recipe are no part of a sentence.
std::string one_blank_each(std::string_view argument) {
    std::string folded;
    for (const char c : argument) {
        if (c != ' ' || folded.empty() || folded.back() != ' ') folded += c;
    }
    return folded;
}

std::string filled(std::string_view wording, std::initializer_list<std::string_view> arguments, std::size_t longest) {
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    for (const std::string_view argument : arguments) {
        store.push_back(text::printable(text::shortened(one_blank_each(argument), longest)));
    }
    // A wording that names more arguments than it is given leaves the place empty instead of failing.
    for (std::size_t count = arguments.size(); count < most_arguments; ++count) store.push_back(std::string());
    return fmt::vformat(wording, store);
}

auto order(const Diagnostic& d) {
    return std::tie(d.file, d.span.begin, d.span.end, d.kind, d.message);
}

}  // namespace

const std::vector<KindInfo>& all_kinds() {
    using enum Severity;
    static const std::vector<KindInfo> kinds = {
#define SCRUPLE_KIND(id, name, severity, wording, write, explanation) \
    {Kind::id, name, severity, wording, write, explanation},
#include "scruple/diagnostics/table.inc"
#undef SCRUPLE_KIND
    };
    return kinds;
}

const KindInfo& info(Kind kind) {
    return all_kinds()[static_cast<std::size_t>(kind)];
}

const KindInfo* find_kind(std::string_view name) {
    const auto& kinds = all_kinds();
    const auto found = std::find_if(kinds.begin(), kinds.end(), [name](const KindInfo& k) { return k.name == name; });
    return found == kinds.end() ? nullptr : &*found;
}

std::string_view name_of(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "error";
        case Severity::warning:
            return "warning";
        case Severity::advice:
            return "advice";
    }
    return {};
}

Diagnostic make(Kind kind, text::FileId file, text::Span span, std::initializer_list<std::string_view> arguments) {
    const KindInfo& about = info(kind);
    return {kind,
            file,
            span,
            filled(about.wording, arguments, longest_in_message),
            filled(about.write, arguments, longest_to_write),
            {}};
}

void sort_and_settle(std::vector<Diagnostic>& diagnostics) {
    std::stable_sort(diagnostics.begin(), diagnostics.end(),
                     [](const Diagnostic& a, const Diagnostic& b) { return order(a) < order(b); });
    const auto same = [](const Diagnostic& a, const Diagnostic& b) { return order(a) == order(b); };
    diagnostics.erase(std::unique(diagnostics.begin(), diagnostics.end(), same), diagnostics.end());
}

bool any_error(const std::vector<Diagnostic>& diagnostics) {
    return std::any_of(diagnostics.begin(), diagnostics.end(),
                       [](const Diagnostic& d) { return info(d.kind).severity == Severity::error; });
}

}  // namespace scruple::diagnostics
