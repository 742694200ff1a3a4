// SPDX-License-Identifier: MIT
#include "wording.hpp"

#include <algorithm>
#include <cctype>

#include "scruple/quantity/exact.hpp"

namespace scruple::printed {

std::string lower(std::string_view text) {
    std::string all(text);
    std::ranges::transform(all, all.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return all;
}

bool is_letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
}

bool has_word(std::string_view text, std::string_view word) {
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || !is_letter(text[at - 1])) && (end == text.size() || !is_letter(text[end]))) return true;
    }
    return false;
}

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> all;
    std::string word;
    const auto end_word = [&] {
        while (!word.empty() && (word.back() == '.' || word.back() == '-')) word.pop_back();
        if (!word.empty()) all.push_back(lower(word));
        word.clear();
    };
    for (std::size_t at = 0; at < text.size(); ++at) {
        const std::string_view rest = text.substr(at);
        const bool dash = rest.starts_with("–") || rest.starts_with("—");
        if (dash) at += 2;
        if (dash || std::string_view(" \t,:;()|").find(rest.front()) != std::string_view::npos)
            end_word();
        else
            word += rest.front();
    }
    end_word();
    return all;
}

std::string tidied(std::string_view text) {
    std::string all;
    for (const char c : text)
        if (c != ' ' || (!all.empty() && all.back() != ' ')) all += c;
    const auto at_end = [](char c) { return std::string_view(" .,:;-_").find(c) != std::string_view::npos; };
    std::size_t begin = 0;
    const auto dash_at = [&](std::size_t at) { return all.compare(at, 3, "–") == 0 || all.compare(at, 3, "—") == 0; };
    while (begin < all.size() && (at_end(all[begin]) || dash_at(begin))) begin += dash_at(begin) ? 3 : 1;
    while (all.size() > begin) {
        if (at_end(all.back()))
            all.pop_back();
        else if (all.size() >= begin + 3 && dash_at(all.size() - 3))
            all.resize(all.size() - 3);
        else
            break;
    }
    return all.substr(begin);
}

std::string figures(double value, int digits) {
    return quantity::significant_text(value, digits);
}

}  // namespace scruple::printed
