// SPDX-License-Identifier: MIT
// JUnit XML, as continuous integration reads it: a test case a file, a failure an error.
#include <fmt/format.h>

#include <algorithm>

#include "places.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::diagnostics {
namespace {

/// Of what is printable already: XML 1.0 takes no control characters in any spelling.
std::string escaped(std::string_view text) {
    std::string all;
    for (const char c : text::printable(text)) {
        if (c == '&')
            all += "&amp;";
        else if (c == '<')
            all += "&lt;";
        else if (c == '>')
            all += "&gt;";
        else if (c == '"')
            all += "&quot;";
        else
            all += c;
    }
    return all;
}

bool is_error(const Diagnostic& d) {
    return info(d.kind).severity == Severity::error;
}

class Report {
  public:
    Report(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources)
        : diagnostics_(diagnostics), places_(sources) {}

    std::string of(std::size_t first, std::size_t count) {
        std::string suites;
        std::size_t tests = 0, failures = 0;
        const auto take = [&](text::FileId file, const std::string& name, bool always) {
            const auto here = std::ranges::count_if(diagnostics_, [&](const Diagnostic& d) { return is_of(d, file); });
            if (!always && here == 0) return;
            const auto errors = static_cast<std::size_t>(std::ranges::count_if(
                diagnostics_, [&](const Diagnostic& d) { return is_of(d, file) && is_error(d); }));
            ++tests;
            failures += errors > 0 ? 1 : 0;
            suites += suite(file, name, errors > 0);
        };
        for (std::size_t file = 0; file < count; ++file)
            take(static_cast<text::FileId>(file), places_.source(static_cast<text::FileId>(file)).path, file >= first);
        take(static_cast<text::FileId>(count), "workspace", false);
        return fmt::format(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"scruple check\" tests=\"{}\" "
            "failures=\"{}\">\n{}</testsuites>\n",
            tests, failures, suites);
    }

  private:
    /// What has no place counts for the file past the last one.
    [[nodiscard]] bool is_of(const Diagnostic& d, text::FileId file) const {
        return places_.has(file) ? d.file == file : !places_.has(d.file);
    }

    std::string suite(text::FileId file, const std::string& path, bool failed) {
        const std::string name = escaped(path);
        std::string inside, aside;
        for (const Diagnostic& d : diagnostics_) {
            if (!is_of(d, file)) continue;
            if (is_error(d))
                inside += fmt::format("      <failure type=\"{}\" message=\"{}\">{}</failure>\n", info(d.kind).name,
                                      escaped(d.message), escaped(line_of(d)));
            else
                aside += escaped(line_of(d)) + "\n";
        }
        if (!aside.empty()) inside += fmt::format("      <system-out>{}</system-out>\n", aside);
        return fmt::format(
            "  <testsuite name=\"{0}\" tests=\"1\" failures=\"{1}\" errors=\"0\">\n    <testcase classname=\"{0}\" "
            "name=\"check\">\n{2}    </testcase>\n  </testsuite>\n",
            name, failed ? 1 : 0, inside);
    }

    std::string line_of(const Diagnostic& d) {
        std::string place;
        if (places_.has(d.file)) {
            const text::Position at = places_.lines(d.file).position(d.span.begin);
            place = fmt::format("{}:{}.{}: ", places_.source(d.file).path, at.line, at.column);
        }
        return fmt::format("{}{}: {} [{}]{}", place, name_of(info(d.kind).severity), d.message, info(d.kind).name,
                           d.write.empty() ? "" : "; write " + d.write);
    }

    std::span<const Diagnostic> diagnostics_;
    Places places_;
};

}  // namespace

std::string as_junit(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                     std::size_t first) {
    return Report(diagnostics, sources).of(first, sources.size());
}

}  // namespace scruple::diagnostics
