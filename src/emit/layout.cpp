// SPDX-License-Identifier: MIT
#include "layout.hpp"

#include <algorithm>

#include "scruple/emit/words.hpp"
#include "scruple/text/printable.hpp"
#include "scruple/text/source.hpp"
#include "scruple/text/wrap.hpp"

namespace scruple::emit {
namespace {

constexpr std::size_t margin = 2;
constexpr std::size_t narrowest = 40;
constexpr std::size_t widest = 80;
constexpr std::size_t least_room = 12;

char capital(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

std::string blanks(std::size_t width, std::string_view beside) {
    const std::size_t taken = text::display_width(beside);
    return std::string(width > taken ? width - taken : 0, ' ');
}

}  // namespace

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    return text::wrapped(words::with_units_kept(text::printable(text)), width);
}

std::string padded_right(std::string_view text, std::size_t width) {
    const std::string shown = text::printable(text);
    return shown + blanks(width, shown);
}

std::string padded_left(std::string_view text, std::size_t width) {
    const std::string shown = text::printable(text);
    return blanks(width, shown) + shown;
}

void AmountColumn::make_room(std::string_view number_text, std::string_view unit_text) {
    number = std::max(number, text::display_width(text::printable(number_text)));
    unit = std::max(unit, text::display_width(text::printable(unit_text)));
}

std::string AmountColumn::line(std::string_view number_text, std::string_view unit_text) const {
    return padded_left(number_text, number) + ' ' + padded_right(unit_text, unit);
}

Sheet::Sheet(const TextStyle& style) : width_(std::clamp(style.width, narrowest, widest) - 2 * margin) {}

void Sheet::line(std::string_view content) {
    const std::size_t end = content.find_last_not_of(' ');
    if (end != std::string_view::npos) text_.append(margin, ' ').append(content.substr(0, end + 1));
    text_ += '\n';
}

void Sheet::blank() {
    if (!text_.ends_with("\n\n")) text_ += '\n';
}

void Sheet::heading(std::string_view words) {
    std::string capitals = text::printable(words);
    std::transform(capitals.begin(), capitals.end(), capitals.begin(), capital);
    blank();
    text_ += '\n';
    line(capitals);
    text_ += '\n';
}

void Sheet::item(std::string_view lead, std::string_view words) {
    const std::size_t indent = text::display_width(lead);
    const std::size_t room = width_ > indent + least_room ? width_ - indent : least_room;
    std::string before = text::printable(lead);
    for (const std::string& part : wrapped(words, room)) {
        line(before + part);
        before.assign(indent, ' ');
    }
}

void Sheet::item(std::string_view lead, std::string_view words, std::string_view right) {
    const std::size_t taken = text::display_width(lead) + text::display_width(right) + 2;
    if (right.empty() || width_ < taken + least_room) {
        item(lead, words);
        if (right.empty()) return;
        for (const std::string& part : wrapped(right, width_)) line(padded_left(part, width_));
        return;
    }
    std::vector<std::string> parts = wrapped(words, width_ - taken);
    std::string first = text::printable(lead);
    first += parts.front();
    line(first + padded_left(right, width_ - text::display_width(first)));
    const std::string indent(text::display_width(lead), ' ');
    for (std::size_t i = 1; i < parts.size(); ++i) line(indent + parts[i]);
}

}  // namespace scruple::emit
