// SPDX-License-Identifier: MIT
// What a file is made of, and what there is in the workspace.
#include <algorithm>

#include "requests.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::server {
namespace {

using syntax::Block;

constexpr std::size_t most_symbols = 1000;

int kind_of(Block block) {
    constexpr int module = 2, class_ = 5, method = 6, enum_ = 10, interface = 11, function = 12, constant = 14,
                  object = 19, event = 24, operator_ = 25;
    switch (block) {
        case Block::recipe:
            return class_;
        case Block::part:
        case Block::bath:
        case Block::working:
        case Block::replenisher:
            return method;
        case Block::chemical:
            return constant;
        case Block::conversion:
            return operator_;
        case Block::bench:
        case Block::supplier:
            return object;
        case Block::log:
        case Block::plan:
            return event;
        case Block::process:
            return function;
        case Block::format:
            return enum_;
        case Block::printed:
            return interface;
        case Block::meeting:
            return module;
    }
    return object;
}

bool is_within_a_recipe(Block block) {
    return block == Block::part || block == Block::bath || block == Block::working || block == Block::replenisher;
}

class Outline {
  public:
    explicit Outline(const Asked& about) : about_(about), tree_(*about.file->tree) {}

    Json all() {
        for (std::size_t i = 0; i < tree_.headings.size(); ++i) add(i);
        return std::move(all_);
    }

  private:
    [[nodiscard]] const syntax::Heading& heading(std::size_t i) const {
        return std::get<syntax::Heading>(tree_.statements[tree_.headings[i]].node);
    }

    /// To the last line before the next heading that does not stand within it.
    [[nodiscard]] text::Span extent(std::size_t i) const {
        const bool recipe = heading(i).block == Block::recipe;
        std::size_t next = i + 1;
        while (recipe && next < tree_.headings.size() && is_within_a_recipe(heading(next).block)) ++next;
        const std::size_t end = next < tree_.headings.size() ? tree_.headings[next] : tree_.statements.size();
        const syntax::Statement& last = tree_.statements[end - 1];
        return {tree_.statements[tree_.headings[i]].span.begin, std::max(last.span.end, last.comment.end)};
    }

    void add(std::size_t i) {
        const text::Span line = tree_.statements[tree_.headings[i]].span;
        Json one{{"name", about_.file->source.at(line)},
                 {"kind", kind_of(heading(i).block)},
                 {"range", to_json(about_.positions.range(extent(i)))},
                 {"selectionRange", to_json(about_.positions.range(line))}};
        const bool within = is_within_a_recipe(heading(i).block) && !all_.empty() && in_recipe_;
        if (!is_within_a_recipe(heading(i).block)) in_recipe_ = heading(i).block == Block::recipe;
        if (within)
            all_.back()["children"].push_back(std::move(one));
        else
            all_.push_back(std::move(one));
    }

    const Asked& about_;
    const syntax::Tree& tree_;
    Json all_ = Json::array();
    bool in_recipe_ = false;
};

}  // namespace

Json document_symbols(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    return Outline(about).all();
}

Json workspace_symbols(Workspace& workspace, const Json& params) {
    const std::string wanted = syntax::normal_name(params.at("query").get<std::string>());
    Json all = Json::array();
    for (FileNumber number = 0; number < workspace.count(); ++number) {
        const File& file = workspace.file(number);
        if (file.uri.empty() || file.gone) continue;
        for (const Occurrence& it : file.names.all) {
            if (!it.defines || it.key.find(wanted, 1) == std::string::npos) continue;
            if (all.size() == most_symbols) return all;
            all.push_back({{"name", it.shown}, {"kind", kind_of(it.block)}, {"location", location(file, it.span)}});
        }
    }
    return all;
}

Json folding(Workspace& workspace, const Json& params) {
    const Asked about = asked(workspace, params);
    Json all = Json::array();
    const auto fold = [&](std::size_t first, std::size_t last, const char* kind) {
        if (last > first) all.push_back({{"startLine", first}, {"endLine", last}, {"kind", kind}});
    };
    const auto fold_symbol = [&](const Json& symbol) {
        const Range range = range_of(symbol.at("range"));
        fold(range.start.line, range.end.line, "region");
    };
    for (const Json& symbol : Outline(about).all()) {
        fold_symbol(symbol);
        if (symbol.contains("children"))
            for (const Json& child : symbol.at("children")) fold_symbol(child);
    }
    std::optional<std::size_t> first, last;
    for (const syntax::Statement& statement : about.file->tree->statements) {
        const bool comment = std::holds_alternative<syntax::CommentOnly>(statement.node);
        const std::size_t line =
            about.positions.position(comment ? statement.comment.begin : statement.span.begin).line;
        if (comment && last && line == *last + 1) {
            last = line;
            continue;
        }
        if (first) fold(*first, *last, "comment");
        first = last = comment ? std::optional(line) : std::nullopt;
    }
    if (first) fold(*first, *last, "comment");
    return all;
}

}  // namespace scruple::server
