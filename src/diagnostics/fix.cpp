// SPDX-License-Identifier: MIT
#include "scruple/diagnostics/fix.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace scruple::diagnostics {
namespace {

/// Kinds whose recipe text goes into the place that is marked. That of others is a sample, or stands elsewhere.
constexpr std::array in_its_place{Kind::ambiguous_unit,      Kind::bare_percent,   Kind::charge_both_ways,
                                  Kind::comma_left_out,      Kind::date_unread,    Kind::decimal_comma,
                                  Kind::form_not_stated,     Kind::ratio_by_colon, Kind::not_made_from,
                                  Kind::strength_not_stated, Kind::unknown_film,   Kind::unknown_form,
                                  Kind::unknown_meeting,     Kind::unknown_name,   Kind::unknown_process,
                                  Kind::unknown_supplier,    Kind::unknown_unit,   Kind::unknown_variant,
                                  Kind::unknown_vessel,      Kind::unread_line,    Kind::which_section};

/// Cuts the first `…` off; empty where there is none.
std::string_view take_quoted(std::string_view& rest) {
    if (!rest.starts_with('`')) return {};
    const std::size_t end = rest.find('`', 1);
    if (end == std::string_view::npos) return {};
    const std::string_view quoted = rest.substr(1, end - 1);
    rest.remove_prefix(end + 1);
    return quoted;
}

bool take(std::string_view& rest, std::string_view word) {
    if (!rest.starts_with(word)) return false;
    rest.remove_prefix(word.size());
    return true;
}

/// ` (grams in 100 ml)`
void pass_remark(std::string_view& rest) {
    if (rest.starts_with(" (")) rest.remove_prefix(std::min(rest.size(), rest.find(')') + 1));
}

/// `a`, `b` (a remark) or `c`, or something in words: what stands in backticks, where that comes first.
std::vector<std::string_view> alternatives(std::string_view rest) {
    std::vector<std::string_view> found;
    for (;;) {
        const std::string_view text = take_quoted(rest);
        if (text.empty()) return found;
        found.push_back(text);
        pass_remark(rest);
        if (rest.empty()) return found;
        if (!take(rest, ", or ") && !take(rest, ", ") && !take(rest, " or ")) return {};
    }
}

/// `3 g, slowly` for a mark under `slowly` alone: what stands before the mark and in the text goes with it.
text::Span with_what_stands_before(const Diagnostic& diagnostic, const text::Source& source, std::string_view text) {
    const std::string_view marked = source.at(diagnostic.span);
    if (!text.ends_with(marked)) return diagnostic.span;
    std::string_view before = text.substr(0, text.size() - marked.size());
    before = before.substr(0, before.find_last_not_of(", ") + 1);
    const std::string_view line = std::string_view(source.bytes).substr(0, diagnostic.span.begin);
    const std::string_view kept = line.substr(0, line.find_last_not_of(" \t") + 1);
    if (before.empty() || !kept.ends_with(before)) return diagnostic.span;
    return {static_cast<std::uint32_t>(kept.size() - before.size()), diagnostic.span.end};
}

/// Of a whole line that is marked, `by conversion from borax`.
text::Span conversion_in(const text::Source& source, text::Span line) {
    const std::string_view marked = source.at(line);
    const std::size_t begin = marked.find("by conversion");
    const std::size_t end = std::min(marked.find(',', begin), marked.size());
    return {line.begin + static_cast<std::uint32_t>(begin), line.begin + static_cast<std::uint32_t>(end)};
}

/// With the blanks before it.
text::Span with_blanks(const text::Source& source, text::Span span) {
    const std::string_view before = std::string_view(source.bytes).substr(0, span.begin);
    return {static_cast<std::uint32_t>(before.find_last_not_of(" \t") + 1), span.end};
}

/// With the blanks before it and the end of the line.
text::Span whole_line(const text::Source& source, text::Span span) {
    const std::size_t end = std::min(source.bytes.find('\n', span.end), source.bytes.size() - 1);
    return {with_blanks(source, span).begin, static_cast<std::uint32_t>(end + 1)};
}

text::Span place_of(const Diagnostic& diagnostic, const text::Source& source, std::string_view text) {
    return diagnostic.kind == Kind::not_made_from ? conversion_in(source, diagnostic.span)
                                                  : with_what_stands_before(diagnostic, source, text);
}

}  // namespace

std::vector<Fix> fixes_of(const Diagnostic& diagnostic, const text::Source& source) {
    std::vector<Fix> fixes;
    if (diagnostic.kind == Kind::nothing_to_accept) return {{whole_line(source, diagnostic.span), ""}};
    if (diagnostic.kind == Kind::heading_with_amount) return {{with_blanks(source, diagnostic.span), ""}};
    if (std::ranges::find(in_its_place, diagnostic.kind) == in_its_place.end()) return fixes;
    std::string_view write = diagnostic.write;
    if (diagnostic.kind == Kind::charge_both_ways) take(write, "the sign, then the digits: ");
    for (const std::string_view text : alternatives(write))
        fixes.push_back({place_of(diagnostic, source, text), std::string(text)});
    return fixes;
}

std::string words_of(const Fix& fix, const text::Source& source) {
    if (!fix.text.empty()) return "Write " + fix.text;
    std::string_view gone = source.at(fix.span);
    gone.remove_prefix(std::min(gone.find_first_not_of(" \t"), gone.size()));
    return "Take " + std::string(gone.substr(0, gone.find_last_not_of('\n') + 1)) + " away";
}

}  // namespace scruple::diagnostics
