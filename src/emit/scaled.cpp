// SPDX-License-Identifier: MIT
// A recipe for another batch: the numbers of its amounts rewritten where they stand, all else as the author left it.
#include <algorithm>

#include "blocks.hpp"
#include "edits.hpp"
#include "rewritten.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/extent.hpp"

namespace scruple::emit {
namespace {

using syntax::Tree;
using text::Span;

/// Whether more of the solution means more of it.
bool grows_with_batch(quantity::Unit unit) {
    if (unit == quantity::Unit::none) return false;
    switch (quantity::info(unit).dimension) {
        case quantity::Dimension::mass:
        case quantity::Dimension::volume:
        case quantity::Dimension::amount:
        case quantity::Dimension::count:
            return true;
        case quantity::Dimension::temperature:
        case quantity::Dimension::time:
        case quantity::Dimension::area:
        case quantity::Dimension::strength:
        case quantity::Dimension::density:
            return false;
    }
    return false;
}

class Scaler {
  public:
    Scaler(const Tree& tree, const quantity::Exact& factor) : tree_(tree), factor_(factor) {}

    void operator()(const syntax::Ingredient& it) {
        // `12 ml per 1 g borax` follows the borax, not the batch.
        if (it.per_quantity != syntax::nowhere || it.how == syntax::Ingredient::How::unknown) return;
        for (const syntax::Range& range : Tree::run(tree_.ranges, it.quantities)) {
            scale(range.low.number, range.high.unit);
            scale(range.high.number, range.high.unit);
        }
        for (const syntax::Detail& detail : Tree::run(tree_.details, it.details))
            if (detail.what == syntax::Detail::What::quantity_now) scale(detail.quantity);
    }
    void operator()(const syntax::VesselStep& it) {
        if (it.share == syntax::VesselStep::Share::quantity) scale(it.quantity);
    }
    template <class Other>
    void operator()(const Other&) {}

    [[nodiscard]] std::vector<Edit> take() { return std::move(edits_); }

  private:
    void scale(syntax::Index quantity) {
        if (quantity == syntax::nowhere) return;
        scale(tree_.quantities[quantity].number, tree_.quantities[quantity].unit);
    }
    void scale(const syntax::Number& number, quantity::Unit unit) {
        if (number.loose() || !grows_with_batch(unit)) return;
        edits_.push_back({number.span, quantity::exact_text(number.value() * factor_)});
    }

    const Tree& tree_;
    const quantity::Exact& factor_;
    std::vector<Edit> edits_;
};

/// The comments above the next block belong to that.
std::size_t end_of_text(const Tree& tree, std::size_t heading) {
    const std::size_t end = syntax::end_of_recipe(tree, heading);
    return end == tree.statements.size() ? end : with_comments_above(tree, end);
}

Span bytes_of(const text::Source& source, const Tree& tree, std::size_t first, std::size_t end) {
    const std::uint32_t begin = line_start(source, begin_of(tree.statements[first]));
    if (end == tree.statements.size()) return {begin, static_cast<std::uint32_t>(source.bytes.size())};
    return {begin, line_start(source, begin_of(tree.statements[end]))};
}

}  // namespace

std::string scaled_text(const text::Source& source, const syntax::Tree& tree, std::uint32_t heading,
                        const quantity::Exact& factor, std::span<const plan::Rewriting> rewritings) {
    const std::size_t end = end_of_text(tree, heading);
    Scaler scaler(tree, factor);
    std::vector<Edit> edits;
    for (std::size_t i = heading; i < end; ++i) {
        const auto anew = std::ranges::find(rewritings, i, &plan::Rewriting::statement);
        // Where both have an edit for a place, the first counts.
        if (anew != rewritings.end()) add_rewriting(source, tree, *anew, factor, edits);
        std::visit(scaler, tree.statements[i].node);
    }
    const std::vector<Edit> scaled = scaler.take();
    edits.insert(edits.end(), scaled.begin(), scaled.end());
    std::string text =
        edited(source, bytes_of(source, tree, with_comments_above(tree, heading), end), std::move(edits));
    text.erase(text.find_last_not_of(" \t\r\n") + 1);
    return text + '\n';
}

}  // namespace scruple::emit
