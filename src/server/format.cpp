// SPDX-License-Identifier: MIT
#include "requests.hpp"
#include "scruple/emit/emit.hpp"

namespace scruple::server {
namespace {

/// As `scruple tidy` has it: a file with a line that cannot be read stays as it is.
bool is_read(const syntax::Statement& statement) {
    if (const auto* heading = std::get_if<syntax::Heading>(&statement.node)) return !heading->bad;
    return !std::holds_alternative<syntax::Unread>(statement.node);
}

}  // namespace

Json formatting(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    if (about.file->fault) throw Refused{-32803, about.file->fault->message};
    for (const syntax::Statement& statement : about.file->tree->statements) {
        if (is_read(statement)) continue;
        const auto line = about.positions.position(statement.span.begin).line + 1;
        throw Refused{-32803, "line " + std::to_string(line) + " cannot be read, and the file stays as it is"};
    }
    const std::string tidy = emit::tidy_text(about.file->source, *about.file->tree);
    if (tidy == about.file->source.bytes) return Json::array();
    const text::Span all{0, static_cast<std::uint32_t>(about.file->source.bytes.size())};
    return Json::array({{{"range", to_json(about.positions.range(all))}, {"newText", tidy}}});
}

}  // namespace scruple::server
