// SPDX-License-Identifier: MIT
#include "excerpt.hpp"

#include <algorithm>

#include "scruple/text/printable.hpp"
#include "scruple/text/utf8.hpp"

namespace scruple::diagnostics {
namespace {

constexpr std::size_t widest = 100;
constexpr std::size_t widest_before_place = 40;
constexpr std::size_t tab_stop = 4;
constexpr std::string_view left_out = "…";

struct Drawn {
    std::string text;
    std::size_t width = 0;
    bool cut = false;
};

std::string shown(std::string_view code_point, std::size_t column) {
    if (code_point == "\t") return std::string(tab_stop - column % tab_stop, ' ');
    return text::printable(code_point);
}

// Stops short of the widest line, however long `bytes` is.
Drawn drawn(std::string_view bytes, std::size_t column) {
    Drawn result;
    while (!bytes.empty()) {
        const std::size_t length = text::first_code_point(bytes).length;
        const std::string piece = shown(bytes.substr(0, length), column + result.width);
        const std::size_t width = text::display_width(piece);
        if (column + result.width + width > widest) {
            result.text += left_out;
            ++result.width;
            result.cut = true;
            break;
        }
        result.text += piece;
        result.width += width;
        bytes.remove_prefix(length);
    }
    return result;
}

std::uint32_t code_point_before(std::string_view bytes, std::uint32_t at, std::uint32_t begin) {
    const std::uint32_t furthest = at - std::min(at - begin, 4u);
    for (std::uint32_t from = furthest; from + 1 < at; ++from) {
        if (from + text::first_code_point(bytes.substr(from, at - from)).length == at) return from;
    }
    return at - 1;
}

std::uint32_t begin_of_view(std::string_view bytes, text::Span line, std::uint32_t place) {
    if (!drawn(bytes.substr(line.begin, line.end - line.begin), 0).cut) return line.begin;
    std::uint32_t begin = place;
    for (std::size_t width = 0; begin > line.begin;) {
        const std::uint32_t previous = code_point_before(bytes, begin, line.begin);
        width += text::display_width(shown(bytes.substr(previous, begin - previous), 0));
        if (width > widest_before_place) break;
        begin = previous;
    }
    return begin;
}

text::Span without_blanks_around(std::string_view bytes, text::Span line, text::Span place) {
    while (line.begin < place.begin && (bytes[line.begin] == ' ' || bytes[line.begin] == '\t')) ++line.begin;
    while (line.end > place.end && (bytes[line.end - 1] == ' ' || bytes[line.end - 1] == '\t')) --line.end;
    return line;
}

}  // namespace

Excerpt excerpt(std::string_view bytes, text::Span line, text::Span place) {
    const std::uint32_t mark_begin = std::clamp(place.begin, line.begin, line.end);
    const std::uint32_t mark_end = std::clamp(place.end, mark_begin, line.end);
    line = without_blanks_around(bytes, line, {mark_begin, mark_end});
    const std::uint32_t begin = begin_of_view(bytes, line, mark_begin);
    const bool cut_before = begin > line.begin;

    const Drawn before = drawn(bytes.substr(begin, mark_begin - begin), cut_before ? 1 : 0);
    Excerpt result{(cut_before ? std::string(left_out) : "") + before.text, {}, {}, before.width, 0};
    result.width_before += cut_before ? 1 : 0;
    const Drawn marked = drawn(bytes.substr(mark_begin, mark_end - mark_begin), result.width_before);
    result.marked = marked.text;
    result.width_marked = marked.width;
    if (!marked.cut) {
        result.after = drawn(bytes.substr(mark_end, line.end - mark_end), result.width_before + marked.width).text;
    }
    return result;
}

}  // namespace scruple::diagnostics
