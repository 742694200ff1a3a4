// SPDX-License-Identifier: MIT
#include "layout.hpp"

#include <algorithm>

#include "scruple/text/printable.hpp"
#include "scruple/text/utf8.hpp"
#include "words.hpp"

namespace scruple::emit {
namespace {

constexpr std::size_t margin = 2;
constexpr std::size_t narrowest = 40;
constexpr std::size_t widest = 80;
constexpr std::size_t least_room = 12;

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

/// As much of a word as `width` columns hold, one character at least.
std::string_view head_of(std::string_view word, std::size_t width) {
    std::size_t length = text::first_code_point(word).length;
    while (length < word.size()) {
        const std::size_t next = length + text::first_code_point(word.substr(length)).length;
        if (text::display_width(word.substr(0, next)) > width) break;
        length = next;
    }
    return word.substr(0, length);
}

class Wrapper {
  public:
    explicit Wrapper(std::size_t width) : width_(width) {}

    void add(std::string_view word) {
        if (!line_.empty() && (!fits(word) || text::display_width(line_) + 1 + text::display_width(word) > width_))
            flush();
        for (; !fits(word); word.remove_prefix(lines_.back().size())) lines_.emplace_back(head_of(word, width_));
        if (!line_.empty()) line_ += ' ';
        line_ += word;
    }

    std::vector<std::string> take() {
        if (!line_.empty() || lines_.empty()) flush();
        return std::move(lines_);
    }

  private:
    [[nodiscard]] bool fits(std::string_view word) const { return head_of(word, width_).size() == word.size(); }

    void flush() {
        lines_.push_back(std::move(line_));
        line_.clear();
    }

    std::size_t width_;
    std::string line_;
    std::vector<std::string> lines_;
};

char capital(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

std::string blanks(std::size_t width, std::string_view beside) {
    const std::size_t taken = text::display_width(beside);
    return std::string(width > taken ? width - taken : 0, ' ');
}

}  // namespace

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    const std::string shown = words::with_units_kept(text::printable(text));
    Wrapper wrapper(std::max<std::size_t>(width, 1));
    for (const std::string_view word : words_of(shown)) wrapper.add(word);
    return wrapper.take();
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
    std::string capitals(words);
    std::transform(capitals.begin(), capitals.end(), capitals.begin(), capital);
    blank();
    text_ += '\n';
    line(capitals);
    text_ += '\n';
}

void Sheet::item(std::string_view lead, std::string_view words) {
    const std::size_t indent = text::display_width(lead);
    const std::size_t room = width_ > indent + least_room ? width_ - indent : least_room;
    std::string before(lead);
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
    std::string first(lead);
    first += parts.front();
    line(first + padded_left(right, width_ - text::display_width(first)));
    const std::string indent(text::display_width(lead), ' ');
    for (std::size_t i = 1; i < parts.size(); ++i) line(indent + parts[i]);
}

}  // namespace scruple::emit
