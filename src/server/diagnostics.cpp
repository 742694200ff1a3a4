// SPDX-License-Identifier: MIT
// What is wrong, and edits that put it right.
#include "requests.hpp"
#include "scruple/diagnostics/fix.hpp"

namespace scruple::server {
namespace {

using diagnostics::Diagnostic;
using diagnostics::Severity;

int number_of(Severity severity) {
    switch (severity) {
        case Severity::error:
            return 1;
        case Severity::warning:
            return 2;
        case Severity::advice:
            return 3;
    }
    return 3;
}

Json one(const Workspace& workspace, const Positions& positions, const Diagnostic& d) {
    const auto& kind = diagnostics::info(d.kind);
    Json all{{"range", to_json(positions.range(d.span))},
             {"severity", number_of(kind.severity)},
             {"code", kind.name},
             {"source", "scruple"},
             {"message", d.write.empty() ? d.message : d.message + "\nwrite " + d.write}};
    for (const diagnostics::Related& related : d.related) {
        const File& file = workspace.file(related.file);
        if (!file.uri.empty())
            all["relatedInformation"].push_back(
                {{"location", location(file, related.span)}, {"message", related.note}});
    }
    return all;
}

Json action(const Asked& about, const Json& shown, const diagnostics::Fix& fix, bool only) {
    const Json edit{{"range", to_json(about.positions.range(fix.span))}, {"newText", fix.text}};
    return {{"title", diagnostics::words_of(fix, about.file->source)},
            {"kind", "quickfix"},
            {"isPreferred", only},
            {"diagnostics", Json::array({shown})},
            {"edit", {{"changes", {{about.file->uri, Json::array({edit})}}}}}};
}

bool wants_quick_fixes(const Json& context) {
    if (!context.contains("only")) return true;
    for (const auto& kind : context.at("only").get<std::vector<std::string>>())
        if (kind.empty() || kind == "quickfix") return true;
    return false;
}

}  // namespace

Json diagnostics_of(const Workspace& workspace, const File& file) {
    const Positions positions = file.positions();
    Json all = Json::array();
    for (const Diagnostic& d : file.found) all.push_back(one(workspace, positions, d));
    return all;
}

Json code_actions(Workspace& workspace, const Json& params) {
    workspace.settle();
    const Asked about = asked(workspace, params);
    Json actions = Json::array();
    if (!wants_quick_fixes(params.at("context"))) return actions;
    const text::Span span = about.positions.span(range_of(params.at("range")));
    for (const Diagnostic& d : about.file->found) {
        if (d.span.begin > span.end || d.span.end < span.begin) continue;
        const auto fixes = diagnostics::fixes_of(d, about.file->source);
        for (const diagnostics::Fix& fix : fixes)
            actions.push_back(action(about, one(workspace, about.positions, d), fix, fixes.size() == 1));
    }
    return actions;
}

}  // namespace scruple::server
