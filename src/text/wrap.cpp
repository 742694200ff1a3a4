// SPDX-License-Identifier: MIT
#include "scruple/text/wrap.hpp"

#include <algorithm>
#include <utility>

#include "scruple/text/source.hpp"
#include "scruple/text/utf8.hpp"

namespace scruple::text {
namespace {

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
    std::size_t length = first_code_point(word).length;
    while (length < word.size()) {
        const std::size_t next = length + first_code_point(word.substr(length)).length;
        if (display_width(word.substr(0, next)) > width) break;
        length = next;
    }
    return word.substr(0, length);
}

class Wrapper {
  public:
    explicit Wrapper(std::size_t width) : width_(width) {}

    void add(std::string_view word) {
        if (!line_.empty() && (!fits(word) || display_width(line_) + 1 + display_width(word) > width_)) flush();
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

}  // namespace

std::vector<std::string> wrapped(std::string_view words, std::size_t width) {
    Wrapper wrapper(std::max<std::size_t>(width, 1));
    for (const std::string_view word : words_of(words)) wrapper.add(word);
    return wrapper.take();
}

}  // namespace scruple::text
