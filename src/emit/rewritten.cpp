// SPDX-License-Identifier: MIT
#include "rewritten.hpp"

#include <algorithm>

#include "scruple/text/source.hpp"

namespace scruple::emit {

namespace {

using plan::Rewriting;
using quantity::Exact;
using syntax::Tree;
using text::Span;

class Rewriter {
  public:
    Rewriter(const text::Source& source, const Tree& tree, const Rewriting& anew, const Exact& factor,
             std::vector<Edit>& edits)
        : source_(source), tree_(tree), anew_(anew), factor_(factor), edits_(edits) {}

    void write(const syntax::Ingredient& line, const syntax::Statement& statement) {
        const auto ranges = Tree::run(tree_.ranges, line.quantities);
        if (ranges.empty()) return;
        for (std::size_t i = 0; i < anew_.amounts.size() && i < ranges.size(); ++i)
            quantity(ranges[i].low, anew_.amounts[i]);
        for (const syntax::Detail& detail : Tree::run(tree_.details, line.details))
            if (detail.what == syntax::Detail::What::quantity_now && anew_.now)
                quantity(tree_.quantities[detail.quantity], *anew_.now);
        if (!anew_.made.empty()) made(line);
        if (!anew_.substance.empty()) substance(line, ranges.front().low.number.span.begin);
        if (!anew_.in_place_of.empty()) remark(line, statement);
    }

  private:
    /// Behind the last amount and the name of its variant.
    [[nodiscard]] Span end_of_amount(const syntax::Ingredient& line) const {
        std::uint32_t end = Tree::run(tree_.ranges, line.quantities).back().high.span().end;
        for (const syntax::Name& share : Tree::run(tree_.names, line.share_names))
            end = std::max(end, share.span.end + (share.quoted ? 1 : 0));
        return {end, end};
    }

    void quantity(const syntax::Quantity& quantity, const Exact& value) {
        edits_.push_back({quantity.span(), quantity::exact_text(value * factor_) + " " + anew_.unit});
    }

    /// The amount stays in its column, as far as the name leaves room.
    void substance(const syntax::Ingredient& line, std::uint32_t amount) {
        Span name = line.what.name.span;
        if (line.what.name.quoted) name = {name.begin - 1, name.end + 1};
        if (line.what.form != syntax::nowhere) name.end = tree_.forms[line.what.form].span.end;
        const std::string_view gap = source_.at({name.end, amount});
        std::string text = anew_.substance;
        const bool all_blank = gap.find_first_not_of(' ') == std::string_view::npos;
        if (all_blank) {
            const std::size_t column = text::display_width(source_.at(name)) + gap.size();
            const std::size_t width = text::display_width(text);
            text.append(width + 1 < column ? column - width : 1, ' ');
            name.end = amount;
        }
        edits_.push_back({name, text});
    }

    /// In the place of the words that say so already, else behind the amount.
    void made(const syntax::Ingredient& line) {
        for (const syntax::Detail& detail : Tree::run(tree_.details, line.details))
            if (detail.what == syntax::Detail::What::by_conversion) return edits_.push_back({detail.span, anew_.made});
        edits_.push_back({end_of_amount(line), ", " + anew_.made});
    }

    /// What the line said, for this batch.
    void remark(const syntax::Ingredient& line, const syntax::Statement& statement) {
        const bool has_comment = !statement.comment.empty();
        const std::uint32_t end = has_comment ? statement.comment.end : statement.span.end;
        edits_.push_back(
            {{end, end},
             (has_comment ? "; in place of " : "  # in place of ") + amount_before(line) + " " + anew_.in_place_of});
    }

    /// `30 g`, `6 g soft, 9 g normal`
    [[nodiscard]] std::string amount_before(const syntax::Ingredient& line) const {
        const auto ranges = Tree::run(tree_.ranges, line.quantities);
        const auto variants = Tree::run(tree_.names, line.share_names);
        std::string text;
        for (std::size_t i = 0; i < ranges.size(); ++i) {
            const syntax::Quantity& quantity = ranges[i].high;
            text += i == 0 ? "" : ", ";
            text += quantity::exact_text(quantity.number.value() * factor_) + " ";
            text += source_.at(quantity.unit_span);
            if (i < variants.size()) text.append(" ").append(source_.at(variants[i].span));
        }
        return text;
    }

    const text::Source& source_;
    const Tree& tree_;
    const Rewriting& anew_;
    const Exact& factor_;
    std::vector<Edit>& edits_;
};

}  // namespace

void add_rewriting(const text::Source& source, const Tree& tree, const Rewriting& rewriting, const Exact& factor,
                   std::vector<Edit>& edits) {
    const syntax::Statement& statement = tree.statements[rewriting.statement];
    if (const auto* line = std::get_if<syntax::Ingredient>(&statement.node))
        Rewriter(source, tree, rewriting, factor, edits).write(*line, statement);
}

}  // namespace scruple::emit
