// SPDX-License-Identifier: MIT
#include "notation.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace scruple::printed {
namespace {

struct Vulgar {
    std::string_view sign;
    int over, under;
};
constexpr std::array vulgar_fractions{Vulgar{"½", 1, 2}, Vulgar{"¼", 1, 4}, Vulgar{"¾", 3, 4}, Vulgar{"⅓", 1, 3},
                                      Vulgar{"⅔", 2, 3}, Vulgar{"⅛", 1, 8}, Vulgar{"⅜", 3, 8}, Vulgar{"⅝", 5, 8},
                                      Vulgar{"⅞", 7, 8}, Vulgar{"⅕", 1, 5}, Vulgar{"⅖", 2, 5}, Vulgar{"⅗", 3, 5},
                                      Vulgar{"⅘", 4, 5}, Vulgar{"⅙", 1, 6}, Vulgar{"⅚", 5, 6}};

struct Counted {
    std::string_view word;
    int over, under;
};
constexpr std::array counted{Counted{"half a", 1, 2},   Counted{"half an", 1, 2},  Counted{"a half", 1, 2},
                             Counted{"one half", 1, 2}, Counted{"one-half", 1, 2}, Counted{"a quarter of a", 1, 4},
                             Counted{"quarter", 1, 4},  Counted{"half", 1, 2},     Counted{"one", 1, 1},
                             Counted{"two", 2, 1},      Counted{"three", 3, 1},    Counted{"four", 4, 1},
                             Counted{"five", 5, 1},     Counted{"six", 6, 1},      Counted{"seven", 7, 1},
                             Counted{"eight", 8, 1},    Counted{"nine", 9, 1},     Counted{"ten", 10, 1},
                             Counted{"twelve", 12, 1},  Counted{"fifteen", 15, 1}, Counted{"sixteen", 16, 1},
                             Counted{"twenty", 20, 1},  Counted{"thirty", 30, 1},  Counted{"forty", 40, 1}};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

std::size_t digits_in(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::find_if_not(text, is_digit) - text.begin());
}

constexpr std::size_t most_digits = 12;  // more are no figure of a formula

Exact whole(std::string_view digits) {
    std::int64_t value = 0;
    for (const char c : digits) value = value * 10 + (c - '0');
    return value;
}

/// `½`, `1/4`
std::optional<Figure> fraction_at(std::string_view text) {
    for (const Vulgar& one : vulgar_fractions)
        if (text.starts_with(one.sign)) return Figure{Exact(one.over, one.under), Exact(1, one.under), one.sign.size()};
    const std::size_t over = digits_in(text);
    if (over == 0 || over > 3 || over >= text.size() || text[over] != '/') return std::nullopt;
    const std::size_t under = digits_in(text.substr(over + 1));
    if (under == 0 || under > 3) return std::nullopt;
    const Exact divisor = whole(text.substr(over + 1, under));
    if (divisor == 0) return std::nullopt;
    return Figure{whole(text.substr(0, over)) / divisor, Exact(1) / divisor, over + 1 + under};
}

/// `1,000` and `1 000`: how much of the text such a figure is, and 0 where there is none.
std::size_t thousands_in(std::string_view text, std::size_t before) {
    if (before == 0 || before > 3 || text.front() == '0' || digits_in(text.substr(before + 1)) != 3) return 0;
    return text[before] == ',' || text.substr(before, 4) == " 000" ? before + 4 : 0;
}

/// Of `.7`, ` .7` and `. 7` behind digits, as it is set or scanned: what stands before the digits.
std::size_t point_in(std::string_view text, bool behind_digits) {
    for (const std::string_view sign : {".", ",", "·", " .", ". "})
        if (text.starts_with(sign) && (behind_digits || sign == ".") && digits_in(text.substr(sign.size())) > 0)
            return sign.size();
    return 0;
}

/// `5.7`, `0,5`, `.5`, `75`, `1,000`
std::optional<Figure> decimal_at(std::string_view text) {
    const std::size_t before = digits_in(text);
    if (before > most_digits) return std::nullopt;
    Figure figure{whole(text.substr(0, before)), 1, before};
    if (before < text.size())
        if (const std::size_t length = thousands_in(text, before); length > 0)
            return Figure{figure.value * 1000 + whole(text.substr(before + 1, 3)), 1, length};
    const std::size_t point = before > 0 || text.starts_with('.') ? point_in(text.substr(before), before > 0) : 0;
    const std::size_t after = point > 0 ? digits_in(text.substr(before + point)) : 0;
    if (after > most_digits || before + after == 0) return std::nullopt;
    for (std::size_t i = 0; i < after; ++i) figure.step /= 10;
    if (after > 0) {
        figure.value += whole(text.substr(before + point, after)) * figure.step;
        figure.length += point + after;
    }
    return figure;
}

char lower_letter(char c) {
    return static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
}

/// `one`, `half an`: only where a unit follows, which the caller sees to.
std::optional<Figure> counted_at(std::string_view text) {
    std::optional<Figure> longest;
    for (const Counted& one : counted) {
        const std::string_view there = text.substr(0, one.word.size());
        const bool ends = text.size() > one.word.size() && text[one.word.size()] == ' ';
        if (ends && (!longest || longest->length < one.word.size()) &&
            std::ranges::equal(there, one.word, {}, lower_letter))
            longest = Figure{Exact(one.over, one.under), Exact(1, one.under), one.word.size(), true};
    }
    return longest;
}

std::size_t joint_at(std::string_view text) {
    return text.starts_with(' ') || text.starts_with('-') ? 1 : 0;
}

/// `1½`, `1 1/2`, `1-1/2`, or one of the two alone.
std::optional<Figure> mixed_at(std::string_view text) {
    if (auto fraction = fraction_at(text)) return fraction;
    auto figure = decimal_at(text);
    if (!figure || figure->step != 1) return figure;
    const std::string_view rest = text.substr(figure->length);
    const std::size_t joint = joint_at(rest);
    const auto fraction = fraction_at(rest.substr(joint));
    if (!fraction || fraction->value >= 1) return figure;
    return Figure{figure->value + fraction->value, fraction->step, figure->length + joint + fraction->length};
}

std::size_t range_word_at(std::string_view text) {
    for (const std::string_view word : {" to ", " or ", " - ", " – ", "-", "–"})
        if (text.starts_with(word)) return word.size();
    return 0;
}

}  // namespace

std::optional<Figure> figure_at(std::string_view text) {
    auto low = mixed_at(text);
    if (!low) return counted_at(text);
    const std::size_t word = range_word_at(text.substr(low->length));
    const auto high = word == 0 ? std::nullopt : mixed_at(text.substr(low->length + word));
    if (!high || high->value <= low->value) return low;
    return Figure{(low->value + high->value) / 2, high->value - low->value, low->length + word + high->length};
}

}  // namespace scruple::printed
