// SPDX-License-Identifier: MIT
#include "uses.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

text::Span item_span(const Reader& reader, const syntax::Item& item) {
    if (item.format == syntax::nowhere) return reader.tree.quantities[item.area].span();
    return {item.count.span.begin, reader.tree.formats[item.format].span.end};
}

/// `film 135` of `per film 135`: the format with the word before it.
text::Span with_word_before(const Reader& reader, text::Span span) {
    const auto& bytes = reader.source.bytes;
    auto begin = span.begin;
    while (begin > 0 && !(bytes[begin - 1] >= 'a' && bytes[begin - 1] <= 'z')) --begin;
    while (begin > 0 && bytes[begin - 1] >= 'a' && bytes[begin - 1] <= 'z') --begin;
    return {begin, span.end};
}

}  // namespace

std::optional<Use> read_use(Reader& reader, const syntax::Item& item) {
    const auto span = item_span(reader, item);
    if (item.format == syntax::nowhere) {
        const auto area = read_positive(reader, reader.tree.quantities[item.area], Dimension::area);
        if (!area) return std::nullopt;
        return Use{.count = 0, .format = none, .sheets = false, .text = reader.text(span), .area_cm2 = area};
    }
    const auto& format = reader.tree.formats[item.format];
    const auto count = read_number(reader, item.count);
    const auto found = resolve_format(reader, format);
    if (!count || !found) return std::nullopt;
    if (*count <= Exact(0)) {
        reader.report(Kind::not_above_nothing, span, {reader.text(span)});
        return std::nullopt;
    }
    Use use{
        .count = *count, .format = found->format, .sheets = format.sheet, .text = reader.text(span), .area_cm2 = {}};
    if (found->area_cm2) use.area_cm2 = *count * *found->area_cm2;
    return use;
}

std::vector<Use> read_uses(Reader& reader, syntax::Slice items) {
    std::vector<Use> uses;
    for (const auto& item : syntax::Tree::run(reader.tree.items, items)) {
        if (auto use = read_use(reader, item)) uses.push_back(std::move(*use));
    }
    return uses;
}

std::optional<PerUse> read_per(Reader& reader, const syntax::Per& per) {
    if (per.quantity != syntax::nowhere) {
        const auto& quantity = reader.tree.quantities[per.quantity];
        const auto measured = read_any(reader, quantity);
        if (!measured) return std::nullopt;
        PerUse use{.text = reader.text(quantity.span())};
        if (measured->dimension == Dimension::area) {
            use.area_cm2 = read_positive(reader, quantity, Dimension::area);
            return use.area_cm2 ? std::optional(use) : std::nullopt;
        }
        use.ml = read_positive(reader, quantity, Dimension::volume);
        return use.ml ? std::optional(use) : std::nullopt;
    }
    const auto& format = reader.tree.formats[per.format];
    const auto found = resolve_format(reader, format);
    if (!found) return std::nullopt;
    return PerUse{.format = found->format,
                  .area_cm2 = found->area_cm2,
                  .ml = {},
                  .text = reader.text(with_word_before(reader, format.span))};
}

}  // namespace scruple::check
