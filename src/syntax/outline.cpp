// SPDX-License-Identifier: MIT
#include "scruple/syntax/outline.hpp"

#include <algorithm>
#include <utility>

#include "grammar/headings.hpp"
#include "parse_line.hpp"

namespace scruple::syntax {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// The words that every heading begins with, and some other lines too.
struct heading_word
    : grammar::choice<grammar::title_word, grammar::label_word, grammar::untitled_word, grammar::conversion_word> {};

bool begins_like_heading(std::string_view line) {
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(line.data(), line.data() + line.size(), std::string());
    return tao::pegtl::parse<heading_word>(in);
}

bool is_mixed(const Statement& statement) {
    return std::holds_alternative<Ingredient>(statement.node) || std::holds_alternative<Mix>(statement.node);
}

/// As long as it is not known what stands under it, it ends before its heading.
OutlinedBlock outlined(const Statement& statement, Index number) {
    const auto& heading = std::get<Heading>(statement.node);
    return {heading.block, heading.bad, false, number, number, statement.span, heading.title.name.span, heading.size};
}

class Outliner {
  public:
    explicit Outliner(std::string_view bytes) : bytes_(bytes), draft_(read_, bytes.data()) {}

    Outline run() {
        std::size_t begin = bytes_.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
        while (begin <= bytes_.size()) {
            const auto end = line_end(begin);
            take(bytes_.substr(begin, end - begin));
            begin = end + 1;
        }
        return std::move(outline_);
    }

  private:
    /// Most files have no CR, and LF alone is found faster.
    [[nodiscard]] std::size_t line_end(std::size_t from) const {
        return std::min(has_cr_ ? bytes_.find_first_of("\n\r", from) : bytes_.find('\n', from), bytes_.size());
    }

    void take(std::string_view line) {
        line.remove_prefix(
            static_cast<std::size_t>(grammar::skip_gap(line.data(), line.data() + line.size()) - line.data()));
        if (line.empty()) return;
        if (line.front() != '#' && (undecided_ || begins_like_heading(line))) read(line);
        (outline_.blocks.empty() ? outline_.before : outline_.blocks.back().end) += 1;
    }

    void read(std::string_view line) {
        read_.clear();
        parse_line(line, draft_);
        const Statement& statement = read_.statements.back();
        if (std::holds_alternative<Heading>(statement.node)) {
            open(outlined(statement, statements()));
        } else if (undecided_ && is_mixed(statement)) {
            outline_.blocks.back().mixes = true;
            undecided_ = false;
        }
    }

    void open(const OutlinedBlock& block) {
        outline_.blocks.push_back(block);
        undecided_ = block.block == Block::recipe;
    }

    [[nodiscard]] Index statements() const {
        return outline_.blocks.empty() ? outline_.before : outline_.blocks.back().end;
    }

    std::string_view bytes_;
    bool has_cr_ = bytes_.find('\r') != std::string_view::npos;
    Outline outline_;
    Tree read_;
    Draft draft_;
    bool undecided_ = false;  ///< in a recipe, before the first line that mixes something
};

}  // namespace

Outline outline(const text::Source& source) {
    return Outliner(source.bytes).run();
}

Outline outline_of(const Tree& tree) {
    Outline outline;
    outline.blocks.reserve(tree.headings.size());
    const auto end_of = [&](std::size_t next) {
        return next < tree.headings.size() ? tree.headings[next] : static_cast<Index>(tree.statements.size());
    };
    outline.before = end_of(0);
    for (std::size_t i = 0; i < tree.headings.size(); ++i) {
        auto block = outlined(tree.statements[tree.headings[i]], tree.headings[i]);
        block.end = end_of(i + 1);
        for (Index at = block.statement + 1; block.block == Block::recipe && !block.mixes && at < block.end; ++at)
            block.mixes = is_mixed(tree.statements[at]);
        outline.blocks.push_back(block);
    }
    return outline;
}

bool is_of_recipe(Block block) {
    return block == Block::part || block == Block::bath || block == Block::working || block == Block::replenisher;
}

bool has_recipes_only(const Outline& outline) {
    return std::ranges::all_of(
        outline.blocks, [](const OutlinedBlock& it) { return it.block == Block::recipe || is_of_recipe(it.block); });
}

}  // namespace scruple::syntax
