// SPDX-License-Identifier: MIT
#include "fold.hpp"

#include <algorithm>
#include <string_view>

namespace scruple::emit {
namespace {

std::vector<std::uint32_t> touching(const syntax::Tree& tree) {
    std::vector<std::uint32_t> places;
    const auto look_at = [&](const syntax::Quantity& quantity) {
        if (!quantity.loose() && quantity.number.span.end == quantity.unit_span.begin)
            places.push_back(quantity.unit_span.begin);
    };
    for (const syntax::Quantity& quantity : tree.quantities) look_at(quantity);
    for (const syntax::Range& range : tree.ranges) {
        look_at(range.low);
        look_at(range.high);
    }
    std::sort(places.begin(), places.end());
    return places;
}

}  // namespace

Folder::Folder(const text::Source& source, const syntax::Tree& tree) : source_(source), touching_(touching(tree)) {}

std::string Folder::operator()(text::Span span) const {
    std::string folded;
    bool in_quotes = false;
    for (std::uint32_t at = span.begin; at < span.end;) {
        const std::uint32_t blank = in_quotes ? 0 : blank_at(at);
        const bool parted = blank > 0 || (!in_quotes && touches_at(at));
        if (parted && !folded.empty() && !folded.ends_with(' ')) folded += ' ';
        at += blank;
        if (blank > 0) continue;
        in_quotes ^= source_.bytes[at] == '"';
        folded += source_.bytes[at++];
    }
    return folded;
}

std::uint32_t Folder::blank_at(std::uint32_t at) const {
    const char c = source_.bytes[at];
    if (c == ' ' || c == '\t') return 1;
    const bool no_break = std::string_view(source_.bytes).substr(at).starts_with(no_break_blank);
    return no_break ? static_cast<std::uint32_t>(no_break_blank.size()) : 0;
}

bool Folder::touches_at(std::uint32_t at) const {
    return std::binary_search(touching_.begin(), touching_.end(), at);
}

}  // namespace scruple::emit
