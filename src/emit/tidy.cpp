// SPDX-License-Identifier: MIT
// One layout for recipe text. Nothing is added or taken away but blanks and blank lines.
#include "blocks.hpp"
#include "columns.hpp"
#include "fold.hpp"
#include "scruple/emit/emit.hpp"

namespace scruple::emit {
namespace {

constexpr std::size_t indentation = 4;
constexpr std::size_t before_comment = 2;

class Tidier {
  public:
    Tidier(const text::Source& source, const syntax::Tree& tree)
        : source_(source), tree_(tree), fold_(source, tree), settings_(settings(source, tree)) {}

    std::string text() {
        const std::size_t count = tree_.statements.size();
        for (std::size_t begin = 0; begin < count;) {
            std::size_t end = begin + 1;
            while (end < count && heading_of(tree_.statements[end]) == nullptr) ++end;
            block(begin, end);
            begin = end;
        }
        return std::move(text_);
    }

  private:
    void block(std::size_t begin, std::size_t end) {
        std::vector<SetRow> rows;
        Columns columns;
        for (std::size_t i = begin; i < end; ++i) {
            rows.push_back(set(tree_.statements[i]));
            columns.make_room(rows.back());
        }
        for (std::size_t i = begin; i < end; ++i) write(i, columns.line(rows[i - begin]));
    }

    [[nodiscard]] SetRow set(const syntax::Statement& statement) const {
        const Row row = row_of(source_, tree_, statement);
        SetRow result{row.shape, {}};
        for (const text::Span cell : row.cells)
            result.cells.push_back(row.shape == Shape::as_it_stands ? std::string(source_.at(cell)) : fold_(cell));
        return result;
    }

    void write(std::size_t index, std::string line) {
        if (!text_.empty() && settings_[index].blank_before) text_ += '\n';
        if (!settings_[index].flush) text_.append(indentation, ' ');
        const text::Span comment = tree_.statements[index].comment;
        if (!comment.empty() && !line.empty()) line.append(before_comment, ' ');
        line += source_.at(comment);
        text_.append(line, 0, line.find_last_not_of(" \t\r") + 1);
        text_ += '\n';
    }

    const text::Source& source_;
    const syntax::Tree& tree_;
    Folder fold_;
    std::vector<Setting> settings_;
    std::string text_;
};

}  // namespace

std::string tidy_text(const text::Source& source, const syntax::Tree& tree) {
    return Tidier(source, tree).text();
}

}  // namespace scruple::emit
