// SPDX-License-Identifier: MIT
// Where a name is defined and where it stands, and another name in all those places.
#include <algorithm>

#include "requests.hpp"
#include "scruple/syntax/normal.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/printable.hpp"
#include "symbol.hpp"

namespace scruple::server {
namespace {

Json locations(const Workspace& workspace, const std::vector<PlaceOfName>& places) {
    Json all = Json::array();
    for (const PlaceOfName& it : places) all.push_back(location(workspace.file(it.file), it.span));
    return all;
}

/// Whether it reads as a name where the old one stands: in a heading, and in a line.
bool is_a_name(const Symbol& symbol, const std::string& name) {
    if (text::printable(name) != name) return false;
    const text::Source source{"", (symbol.of_section ? "part " : "recipe ") + name + "\n    " +
                                      (symbol.of_section ? "part " : "") + name + "   5 g\n"};
    const syntax::Tree tree = syntax::parse(source);
    if (tree.statements.size() != 2) return false;
    const auto* heading = std::get_if<syntax::Heading>(&tree.statements[0].node);
    const auto* line = std::get_if<syntax::Ingredient>(&tree.statements[1].node);
    if (heading == nullptr || heading->bad || line == nullptr || line->what.form != syntax::nowhere) return false;
    const std::string_view in_line = source.at(line->what.name.span);
    return source.at(heading->title.name.span) == name && in_line == (symbol.of_section ? "part " + name : name);
}

Symbol renamed(const Workspace& workspace, const Asked& about) {
    const auto symbol = symbol_at(workspace, about);
    if (!symbol) throw Refused{-32803, "no name stands here"};
    if (symbol->library)
        throw Refused{-32803, "this is a name of the library; your own `chemical` block can add another"};
    const bool labelled = about.file->source.at(symbol->asked).find(' ') == std::string_view::npos;
    if (symbol->of_section && !labelled && !about.file->source.at(symbol->asked).starts_with('"'))
        throw Refused{-32803, "this solution has no label that could be changed"};
    return *symbol;
}

}  // namespace

Json definition(Workspace& workspace, const Json& params) {
    const auto symbol = symbol_at(workspace, asked(workspace, params));
    if (!symbol) return nullptr;
    auto places = places_of(workspace, *symbol, true);
    std::erase_if(places, [](const PlaceOfName& it) { return !it.defines; });
    return locations(workspace, places);
}

Json references(Workspace& workspace, const Json& params) {
    const auto symbol = symbol_at(workspace, asked(workspace, params));
    if (!symbol) return Json::array();
    auto places = places_of(workspace, *symbol, false);
    if (!params.at("context").at("includeDeclaration").get<bool>())
        std::erase_if(places, [](const PlaceOfName& it) { return it.defines; });
    return locations(workspace, places);
}

Json highlights(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    const auto symbol = symbol_at(workspace, about);
    Json all = Json::array();
    if (!symbol) return all;
    for (const PlaceOfName& it : places_of(workspace, *symbol, false))
        if (it.file == about.number)
            all.push_back({{"range", to_json(about.positions.range(it.span))}, {"kind", it.defines ? 3 : 2}});
    return all;
}

Json prepare_rename(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    const Symbol symbol = renamed(workspace, about);
    return {{"range", to_json(about.positions.range(symbol.asked))},
            {"placeholder", about.file->source.at(symbol.asked)}};
}

Json rename(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    const Symbol symbol = renamed(workspace, about);
    const auto name = params.at("newName").get<std::string>();
    if (!is_a_name(symbol, name)) throw Refused{-32602, "`" + name + "` is no name, or needs quotes"};
    const std::string key = symbol.key.front() + syntax::normal_name(name);
    if (!symbol.of_section && key != symbol.key && !workspace.index().defining(key).empty())
        throw Refused{-32803, "something else is called `" + name + "` already"};
    Json changes = Json::object();
    for (const PlaceOfName& it : places_of(workspace, symbol, true)) {
        const File& file = workspace.file(it.file);
        changes[file.uri].push_back({{"range", to_json(file.positions().range(it.span))}, {"newText", name}});
    }
    return {{"changes", changes}};
}

}  // namespace scruple::server
