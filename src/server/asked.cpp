// SPDX-License-Identifier: MIT
#include "asked.hpp"

#include "uri.hpp"

namespace scruple::server {

Position position_of(const Json& json) {
    return {json.at("line").get<std::size_t>(), json.at("character").get<std::size_t>()};
}

Range range_of(const Json& json) {
    return {position_of(json.at("start")), position_of(json.at("end"))};
}

Json to_json(const Position& position) {
    return {{"line", position.line}, {"character", position.character}};
}

Json to_json(const Range& range) {
    return {{"start", to_json(range.start)}, {"end", to_json(range.end)}};
}

Json location(const File& file, text::Span span) {
    return {{"uri", file.uri}, {"range", to_json(file.positions().range(span))}};
}

Asked asked(Workspace& workspace, const Json& params) {
    const auto uri = params.at("textDocument").at("uri").get<std::string>();
    const auto path = path_of(uri);
    const auto number = path ? workspace.find(*path) : std::nullopt;
    if (!number) throw Refused{-32602, uri + " is not open here"};
    File& file = workspace.file(*number);
    Positions positions = file.positions();
    const std::uint32_t offset = params.contains("position") ? positions.offset(position_of(params.at("position"))) : 0;
    return {*number, &file, std::move(positions), offset};
}

const Occurrence* occurrence_at(const File& file, std::uint32_t offset) {
    for (const Occurrence& it : file.names.all)
        if (it.span.begin <= offset && offset <= it.span.end) return &it;
    return nullptr;
}

syntax::Index statement_at(const File& file, const Positions& positions, std::uint32_t offset) {
    const text::Span line = positions.line(positions.position(offset).line);
    const auto& statements = file.tree->statements;
    for (syntax::Index i = 0; i < statements.size(); ++i)
        if (statements[i].span.begin >= line.begin && statements[i].span.begin <= line.end &&
            !std::holds_alternative<syntax::CommentOnly>(statements[i].node))
            return i;
    return syntax::nowhere;
}

syntax::Index heading_above(const File& file, std::uint32_t offset) {
    syntax::Index found = syntax::nowhere;
    for (const syntax::Index heading : file.tree->headings)
        if (file.tree->statements[heading].span.begin <= offset) found = heading;
    return found;
}

}  // namespace scruple::server
