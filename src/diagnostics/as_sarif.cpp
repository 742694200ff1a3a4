// SPDX-License-Identifier: MIT
// SARIF 2.1.0, the OASIS standard for what analysis finds (docs.oasis-open.org/sarif/sarif/v2.1.0).
#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "places.hpp"
#include "scruple/diagnostics/fix.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::diagnostics {
namespace {

using Value = nlohmann::ordered_json;

/// What a URI reference may hold as it stands (RFC 3986); all else goes by its bytes.
std::string uri_of(std::string_view path) {
    constexpr std::string_view digits = "0123456789ABCDEF", plain = "-._~/";
    std::string uri;
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        const bool alphanumeric = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        if (alphanumeric || plain.find(c) != std::string_view::npos)
            uri += c;
        else
            uri += {'%', digits[byte >> 4], digits[byte & 15]};
    }
    return path.starts_with('/') ? "file://" + uri : uri;
}

/// The levels of SARIF are our severities, but for the word for advice.
std::string_view level_of(Severity severity) {
    return severity == Severity::advice ? "note" : name_of(severity);
}

Value message(std::string_view text) {
    return {{"text", text}};
}

class Log {
  public:
    Log(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources)
        : diagnostics_(diagnostics), places_(sources) {}

    Value document(std::string_view version) {
        Value run;
        run["tool"]["driver"] = {{"name", "Scruple"}, {"version", version}, {"rules", rules()}};
        run["columnKind"] = "unicodeCodePoints";
        run["results"] = Value::array();
        for (const Diagnostic& d : diagnostics_) run["results"].push_back(result(d));
        return {
            {"$schema", "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"},
            {"version", "2.1.0"},
            {"runs", Value::array({run})}};
    }

  private:
    Value rules() {
        Value all = Value::array();
        for (const KindInfo& kind : all_kinds()) {
            const auto found = [&](const Diagnostic& d) { return d.kind == kind.kind; };
            if (std::ranges::none_of(diagnostics_, found)) continue;
            index_[kind.kind] = all.size();
            all.push_back({{"id", kind.name},
                           {"fullDescription", message(kind.explanation)},
                           {"defaultConfiguration", {{"level", level_of(kind.severity)}}}});
        }
        return all;
    }

    Value region(text::FileId file, text::Span span) {
        text::Lines& lines = places_.lines(file);
        const text::Position begin = lines.position(span.begin), end = lines.position(span.end);
        return {
            {"startLine", begin.line}, {"startColumn", begin.column}, {"endLine", end.line}, {"endColumn", end.column}};
    }

    Value artifact(text::FileId file) { return {{"uri", uri_of(places_.source(file).path)}}; }

    Value location(text::FileId file, text::Span span) {
        return {{"physicalLocation", {{"artifactLocation", artifact(file)}, {"region", region(file, span)}}}};
    }

    Value result(const Diagnostic& d) {
        Value all{{"ruleId", info(d.kind).name},
                  {"ruleIndex", index_.at(d.kind)},
                  {"level", level_of(info(d.kind).severity)},
                  {"message", message(d.write.empty() ? d.message : d.message + "; write " + d.write)}};
        if (!places_.has(d.file)) return all;
        all["locations"] = Value::array({location(d.file, d.span)});
        for (const Related& related : d.related) {
            Value one = location(related.file, related.span);
            one["message"] = message(related.note);
            all["relatedLocations"].push_back(std::move(one));
        }
        for (const Fix& fix : fixes_of(d, places_.source(d.file))) all["fixes"].push_back(edit(d.file, fix));
        return all;
    }

    Value edit(text::FileId file, const Fix& fix) {
        const Value replacement{{"deletedRegion", region(file, fix.span)}, {"insertedContent", message(fix.text)}};
        const Value change{{"artifactLocation", artifact(file)}, {"replacements", Value::array({replacement})}};
        return {{"description", message(words_of(fix, places_.source(file)))},
                {"artifactChanges", Value::array({change})}};
    }

    std::span<const Diagnostic> diagnostics_;
    Places places_;
    std::map<Kind, std::size_t> index_;  ///< of each kind that is found among the rules
};

}  // namespace

std::string as_sarif(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources,
                     std::string_view version) {
    const Value document = Log(diagnostics, sources).document(version);
    return text::with_unseen_escaped(document.dump(2, ' ', false, Value::error_handler_t::replace)) + "\n";
}

}  // namespace scruple::diagnostics
