// SPDX-License-Identifier: MIT
#include "positions.hpp"

#include <algorithm>

#include "scruple/text/utf8.hpp"

namespace scruple::server {
namespace {

std::size_t units_of(char32_t value) {
    return value > 0xFFFF ? 2 : 1;
}

}  // namespace

Positions::Positions(std::string_view text) : text_(text), starts_{0} {
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n')))
            starts_.push_back(static_cast<std::uint32_t>(i + 1));
    }
}

text::Span Positions::line(std::size_t line) const {
    if (line >= starts_.size())
        return {static_cast<std::uint32_t>(text_.size()), static_cast<std::uint32_t>(text_.size())};
    std::size_t end = line + 1 < starts_.size() ? starts_[line + 1] : text_.size();
    while (end > starts_[line] && (text_[end - 1] == '\n' || text_[end - 1] == '\r')) --end;
    return {starts_[line], static_cast<std::uint32_t>(end)};
}

Position Positions::position(std::uint32_t offset) const {
    const auto place = std::min<std::size_t>(offset, text_.size());
    const auto after = std::upper_bound(starts_.begin(), starts_.end(), static_cast<std::uint32_t>(place));
    const auto line = static_cast<std::size_t>(after - starts_.begin()) - 1;
    std::size_t character = 0;
    for (std::size_t i = starts_[line]; i < place;) {
        const auto point = text::first_code_point(text_.substr(i));
        i += point.length;
        if (i <= place) character += units_of(point.value);
    }
    return {line, character};
}

std::uint32_t Positions::offset(Position position) const {
    const text::Span whole = line(position.line);
    std::size_t i = whole.begin, left = position.character;
    while (i < whole.end) {
        const auto point = text::first_code_point(text_.substr(i));
        if (units_of(point.value) > left) break;
        left -= units_of(point.value);
        i += point.length;
    }
    return static_cast<std::uint32_t>(i);
}

text::Span Positions::span(Range range) const {
    const std::uint32_t begin = offset(range.start);
    return {begin, std::max(begin, offset(range.end))};
}

}  // namespace scruple::server
