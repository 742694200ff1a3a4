// SPDX-License-Identifier: MIT
#include "blocks.hpp"

namespace scruple::emit {

bool is_comment(const syntax::Statement& statement) {
    return std::holds_alternative<syntax::CommentOnly>(statement.node);
}

const syntax::Heading* heading_of(const syntax::Statement& statement) {
    return std::get_if<syntax::Heading>(&statement.node);
}

std::size_t with_comments_above(const syntax::Tree& tree, std::size_t heading) {
    std::size_t first = heading;
    while (first > 0 && !tree.statements[first].blank_before && is_comment(tree.statements[first - 1])) --first;
    return first;
}

std::uint32_t line_start(const text::Source& source, std::uint32_t offset) {
    while (offset > 0 && source.bytes[offset - 1] != '\n' && source.bytes[offset - 1] != '\r') --offset;
    return offset;
}

std::uint32_t begin_of(const syntax::Statement& statement) {
    return is_comment(statement) ? statement.comment.begin : statement.span.begin;
}

namespace {

/// A run of comment lines [first, end) that ends at a heading or at the end of the file.
class Comments {
  public:
    Comments(const text::Source& source, const syntax::Tree& tree, std::vector<Setting>& settings)
        : source_(source), tree_(tree), settings_(settings) {}

    void before_heading(std::size_t first, std::size_t heading) {
        const std::size_t above = with_comments_above(tree_, heading);
        for (std::size_t i = above; i <= heading; ++i) settings_[i] = {true, i == above};
        paragraphs(first, above);
    }
    void paragraphs(std::size_t first, std::size_t end) {
        bool flush = false;
        for (std::size_t i = first; i < end; ++i) {
            if (i == first || tree_.statements[i].blank_before) flush = starts_flush(i);
            settings_[i].flush = flush;
        }
    }

  private:
    [[nodiscard]] bool starts_flush(std::size_t index) const {
        const std::uint32_t begin = begin_of(tree_.statements[index]);
        return index == 0 || (tree_.statements[index].blank_before && line_start(source_, begin) == begin);
    }

    const text::Source& source_;
    const syntax::Tree& tree_;
    std::vector<Setting>& settings_;
};

}  // namespace

std::vector<Setting> settings(const text::Source& source, const syntax::Tree& tree) {
    const std::size_t count = tree.statements.size();
    std::vector<Setting> all;
    for (const syntax::Statement& statement : tree.statements) all.push_back({false, statement.blank_before});
    Comments comments(source, tree, all);
    std::size_t run = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (heading_of(tree.statements[i]) != nullptr) comments.before_heading(run, i);
        if (!is_comment(tree.statements[i])) run = i + 1;
    }
    comments.paragraphs(run, count);
    return all;
}

}  // namespace scruple::emit
