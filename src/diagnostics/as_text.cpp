// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

#include "excerpt.hpp"
#include "places.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::diagnostics {
namespace {

constexpr std::string_view line_indent = "    ";
constexpr std::string_view write_label = "    write  ";
constexpr std::string_view see_label = "    see    ";
constexpr std::string_view under_label = "           ";

// ECMA-48 renditions.
constexpr std::string_view marked_look = "1;38;5;208";
constexpr std::string_view write_look = "1;38;5;37";

std::string_view look_of(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "1;7";
        case Severity::warning:
            return "1;4";
        case Severity::advice:
            return "1";
    }
    return {};
}

std::string repeated(std::string_view what, std::size_t times) {
    std::string result;
    for (std::size_t n = 0; n < times; ++n) result += what;
    return result;
}

class Page {
  public:
    Page(std::span<const text::Source> sources, bool colour) : places_(sources), colour_(colour) {}

    void add(const Diagnostic& d) {
        const KindInfo& about = info(d.kind);
        const std::string severity = painted(std::string(name_of(about.severity)), look_of(about.severity));
        add_line("{}{}: {} [{}]", place(d.file, d.span), severity, d.message, about.name);
        add_excerpt(d.file, d.span, line_indent);
        add_proposal(d.write);
        for (const Related& related : d.related) {
            add_line("{}{}{}", see_label, place(related.file, related.span), related.note);
            add_excerpt(related.file, related.span, under_label);
        }
        text_ += '\n';
    }

    template <class... Arguments>
    void add_line(fmt::format_string<Arguments...> form, Arguments&&... arguments) {
        fmt::format_to(std::back_inserter(text_), form, std::forward<Arguments>(arguments)...);
        text_ += '\n';
    }

    [[nodiscard]] std::string take() { return std::move(text_); }

  private:
    [[nodiscard]] std::string painted(std::string words, std::string_view look) const {
        return colour_ && !words.empty() ? fmt::format("\x1B[{}m{}\x1B[0m", look, words) : std::move(words);
    }

    std::string place(text::FileId file, text::Span span) {
        if (!places_.has(file)) return {};
        const text::Position at = places_.lines(file).position(span.begin);
        return fmt::format("{}:{}.{}: ", text::printable(places_.source(file).path), at.line, at.column);
    }

    void add_excerpt(text::FileId file, text::Span span, std::string_view indent) {
        if (!places_.has(file)) return;
        const text::Span line = places_.lines(file).line_around(span.begin);
        if (line.empty()) return;
        const Excerpt shown = excerpt(places_.source(file).bytes, line, span);
        add_line("{}{}{}{}", indent, shown.before, painted(shown.marked, marked_look), shown.after);
        const std::string marks = repeated("‾", std::max<std::size_t>(shown.width_marked, 1));
        add_line("{}{}{}", indent, repeated(" ", shown.width_before), painted(marks, marked_look));
    }

    void add_proposal(std::string_view write) {
        for (std::string_view label = write_label; !write.empty(); label = under_label) {
            const std::string_view line = write.substr(0, write.find('\n'));
            add_line("{}{}", label, painted(std::string(line), write_look));
            write.remove_prefix(std::min(write.size(), line.size() + 1));
        }
    }

    Places places_;
    bool colour_;
    std::string text_;
};

std::string counted(std::size_t count, std::string_view one, std::string_view several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

/// ` in 2 of 9 files`
std::string in_files(std::size_t files, std::size_t checked) {
    if (files == 0) return {};
    if (files < checked) return fmt::format(" in {} of {}", files, counted(checked, "file", "files"));
    return " in " + counted(files, "file", "files");
}

std::string count_of_all(std::span<const Diagnostic> diagnostics, std::size_t files_known, std::size_t checked) {
    std::array<std::size_t, 3> counts{};
    std::set<text::FileId> files;
    for (const Diagnostic& d : diagnostics) {
        ++counts[static_cast<std::size_t>(info(d.kind).severity)];
        if (d.file < files_known) files.insert(d.file);
    }
    std::vector<std::string> parts;
    if (counts[0] > 0) parts.push_back(counted(counts[0], "error", "errors"));
    if (counts[1] > 0) parts.push_back(counted(counts[1], "warning", "warnings"));
    if (counts[2] > 0) parts.push_back(counted(counts[2], "piece of advice", "pieces of advice"));
    return fmt::format("{}{}", fmt::join(parts, ", "), in_files(files.size(), checked));
}

// The gravest, as many as `limit`, in the order in which they came.
std::vector<const Diagnostic*> chosen(std::span<const Diagnostic> diagnostics, std::size_t limit) {
    std::vector<const Diagnostic*> all;
    for (const Diagnostic& d : diagnostics) all.push_back(&d);
    if (all.size() <= limit) return all;
    std::stable_sort(all.begin(), all.end(), [](const Diagnostic* a, const Diagnostic* b) {
        return info(a->kind).severity < info(b->kind).severity;
    });
    all.resize(limit);
    std::sort(all.begin(), all.end());
    return all;
}

}  // namespace

std::string as_text(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                    const TextStyle& style) {
    if (diagnostics.empty()) return {};
    Page page(sources, style.colour);
    for (const Diagnostic* d : chosen(diagnostics, style.limit)) page.add(*d);
    if (diagnostics.size() > style.limit) {
        page.add_line("{} of {} are shown, errors before the rest", style.limit, diagnostics.size());
    }
    page.add_line("{}", count_of_all(diagnostics, sources.size(), style.checked));
    return page.take();
}

}  // namespace scruple::diagnostics
