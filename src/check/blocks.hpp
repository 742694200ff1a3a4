// SPDX-License-Identifier: MIT
// A file's statements cut into blocks, and the names that the blocks define.
#pragma once

#include <string>
#include <vector>

#include "reader.hpp"
#include "scruple/check/check.hpp"

namespace scruple::check {

/// A heading and the statements under it, up to the next heading.
struct Block {
    text::FileId file = 0;
    std::uint32_t heading = none;  ///< index of the heading's statement; none before the first
    std::uint32_t begin = 0;       ///< the statements under it
    std::uint32_t end = 0;
    syntax::Block kind = syntax::Block::recipe;
    Id id = none;      ///< of what the block defines, in the model's array for its kind
    Id recipe = none;  ///< the recipe it belongs to, for the solutions of one
};

/// What stands in a file begins with these, and ends with those of the next one.
struct FileBegin {
    std::uint32_t block = 0;  ///< of Defined::blocks
    Id recipe = 0, section = 0;
};

struct Defined {
    std::vector<Block> blocks;     ///< in file and line order; a file's first stands before its first heading
    std::vector<FileBegin> files;  ///< by file, and one past the last
};

/// Cuts all files from the first one wanted on into blocks, makes room in the model for what they define, and enters
/// the names. A block that may not define anything has no id.
[[nodiscard]] Defined define(const Workspace& workspace, text::FileId first, Model& model,
                             std::vector<diagnostics::Diagnostic>& out);

/// Whether a block is a recipe with parts; it may be nothing else.
[[nodiscard]] bool has_parts(const std::vector<Block>& all, const Block& block);

/// `a recipe`, `the supplier Pier`: for messages about a block.
[[nodiscard]] std::string_view words_for(syntax::Block kind);
/// `a step`, `an ingredient`: for messages about a statement.
[[nodiscard]] std::string words_for(const syntax::Node& node);

/// Reports the statement as out of place in this block; unread statements are reported as such.
void report_stray(Reader& reader, const syntax::Statement& statement, const Block& block);
/// Reports a quote that the line opens and does not close; false where there is none.
bool report_open_quote(Reader& reader, const syntax::Statement& statement);

/// Runs `take` over the statements of a block with reader.statement set; those that `take` does not want
/// (returns false) are reported as stray.
template <class Take>
void each_statement(Reader& reader, const Block& block, Take take) {
    for (std::uint32_t i = block.begin; i < block.end; ++i) {
        const auto& statement = reader.tree.statements[i];
        if (std::holds_alternative<syntax::CommentOnly>(statement.node)) continue;
        reader.statement = i;
        // Free text takes the rest of the line as it stands, a lone quote too.
        if (std::holds_alternative<syntax::Words>(statement.node)) report_open_quote(reader, statement);
        if (!std::visit(take, statement.node)) report_stray(reader, statement, block);
    }
}

/// Overloads of lambdas for std::visit.
template <class... Fs>
struct overloaded : Fs... {
    using Fs::operator()...;
};
template <class... Fs>
overloaded(Fs...) -> overloaded<Fs...>;

}  // namespace scruple::check
