// SPDX-License-Identifier: MIT
// The runs of characters that most of a text is made of, found without a rule for each character.
#pragma once

#include <array>
#include <cstring>
#include <string_view>

#include "core.hpp"

namespace scruple::grammar::scan {

using Class = std::array<bool, 256>;

/// Every byte but these.
constexpr Class all_but(std::string_view bytes) {
    Class all;
    all.fill(true);
    for (const char byte : bytes) all[static_cast<unsigned char>(byte)] = false;
    return all;
}

constexpr bool in(const Class& set, char byte) {
    return set[static_cast<unsigned char>(byte)];
}

constexpr bool at_hard_blank(const char* from, const char* end) {
    return *from == '\xC2' && end - from > 1 && from[1] == '\xA0';
}

constexpr bool at_blank(const char* from, const char* end) {
    return *from == ' ' || *from == '\t' || at_hard_blank(from, end);
}

constexpr bool at_line_end(const char* from, const char* end) {
    return from == end || *from == '\n' || *from == '\r';
}

inline const char* gap(const char* from, const char* end) {
    const char* stop = skip_gap(from, end);
    return stop == from ? nullptr : stop;
}

inline const char* digits(const char* from, const char* end) {
    const char* stop = from;
    while (stop != end && *stop >= '0' && *stop <= '9') ++stop;
    return stop == from ? nullptr : stop;
}

inline const char* edge(const char* from, const char* end) {
    return at_line_end(from, end) || *from == ',' || *from == ')' || at_blank(from, end) ? from : nullptr;
}

// ---- numbers ---------------------------------------------------------------------------------

constexpr bool is_digit(char byte) {
    return byte >= '0' && byte <= '9';
}

inline bool begins(const char* from, const char* end, std::string_view text) {
    return std::string_view(from, static_cast<std::size_t>(end - from)).starts_with(text);
}

/// The bytes of one of these signs; 0 where none stands here.
inline std::size_t one_sign(const char* from, const char* end, std::initializer_list<std::string_view> signs) {
    for (const auto sign : signs) {
        if (begins(from, end, sign)) return sign.size();
    }
    return 0;
}

inline std::size_t vulgar(const char* from, const char* end) {
    if (from == end || (*from != '\xC2' && *from != '\xE2')) return 0;
    return one_sign(from, end, {"½", "¼", "¾", "⅓", "⅔", "⅛", "⅜", "⅝", "⅞"});
}

inline std::size_t slash(const char* from, const char* end) {
    if (from == end) return 0;
    return *from == '/' ? 1 : begins(from, end, "⁄") ? std::string_view("⁄").size() : 0;
}

inline const char* past_sign(const char* from, const char* end) {
    if (from == end || is_digit(*from)) return from;
    return from + one_sign(from, end, {"-", "+", "−"});
}

/// `/2`; null where none stands here. Nothing is divided by what begins with 0.
inline const char* denominator(const char* from, const char* end) {
    const auto length = slash(from, end);
    if (length == 0 || from + length == end || from[length] == '0') return nullptr;
    return digits(from + length, end);
}

/// ` 1/2` or `/2`; null where neither stands here.
inline const char* common_fraction(const char* from, const char* end) {
    if (!at_blank(from, end)) return denominator(from, end);
    const char* next = digits(skip_gap(from, end), end);
    return next == nullptr ? nullptr : denominator(next, end);
}

/// What may follow the digits a number begins with: `.5`, `½`, `/2`, ` 1/2`.
inline const char* fraction(const char* from, const char* end) {
    if (const auto length = vulgar(from, end)) return from + length;
    const char* next = *from == '.' ? digits(from + 1, end) : common_fraction(from, end);
    return next == nullptr ? from : next;
}

/// The bytes of what a number may not be followed by; 0 where none of it stands here.
inline std::size_t goes_on(const char* from, const char* end) {
    if (from == end) return 0;
    if (is_digit(*from) || *from == '.' || *from == ':') return 1;
    if (*from == ',') return end - from > 1 && is_digit(from[1]) ? 2 : 0;
    const auto length = slash(from, end);
    return length != 0 ? length : vulgar(from, end);
}

inline constexpr Class number_is_over = all_but("0123456789.,:/ \t\xC2\xE2");

/// A number ends here for sure, as the digits before a letter, or before one blank and a letter, do.
inline bool at_end_of_number(const char* from, const char* end) {
    if (from == end || in(number_is_over, *from)) return true;
    return *from == ' ' && end - from > 1 && from[1] != ' ' && in(number_is_over, from[1]);
}

inline const char* number(const char* from, const char* end) {
    const char* next = past_sign(from, end);
    if (const char* whole = digits(next, end)) {
        if (at_end_of_number(whole, end)) return whole;
        next = fraction(whole, end);
        if (next == whole && at_blank(whole, end)) return whole;
    } else {
        const auto length = vulgar(next, end);
        if (length == 0) return nullptr;
        next += length;
    }
    return goes_on(next, end) == 0 ? next : nullptr;
}

inline const char* loose_number(const char* from, const char* end) {
    const char* next = past_sign(from, end);
    if (next == end) return nullptr;
    if (*next == '.' || *next == ',') {
        if (end - next < 2 || !is_digit(next[1])) return nullptr;
        next += 2;
    } else {
        const auto length = is_digit(*next) ? 1 : vulgar(next, end);
        if (length == 0) return nullptr;
        next += length;
    }
    while (const auto length = goes_on(next, end)) next += length;
    return next;
}

inline const char* number_ahead(const char* from, const char* end) {
    const char* next = past_sign(from, end);
    return next != end && (is_digit(*next) || vulgar(next, end) != 0) ? from : nullptr;
}

inline const char* currency(const char* from, const char* end) {
    if (end - from < 3 || !std::all_of(from, from + 3, [](char c) { return c >= 'A' && c <= 'Z'; })) return nullptr;
    return edge(from + 3, end) == nullptr ? nullptr : from + 3;
}

// ---- lists and ends --------------------------------------------------------------------------

/// A comma that parts the items of a list: one with a blank or the end of the line after it.
inline bool at_list_comma(const char* from, const char* end) {
    return from != end && *from == ',' && (at_line_end(from + 1, end) || at_blank(from + 1, end));
}

inline const char* list_comma(const char* from, const char* end) {
    if (!at_list_comma(from, end)) return nullptr;
    const char* next = from + 1;
    return next == end ? next : at_hard_blank(next, end) ? next + 2 : next + 1;
}

inline bool at_end_of_statement(const char* from, const char* end) {
    const char* next = skip_gap(from, end);
    return at_line_end(next, end) || (next != from && *next == '#');
}

inline const char* ends(const char* from, const char* end) {
    return at_end_of_statement(from, end) ? from : nullptr;
}

inline const char* item_end(const char* from, const char* end) {
    return at_list_comma(from, end) || at_end_of_statement(from, end) ? from : nullptr;
}

/// Where a run goes on from a character that needs a second look; null where it stops.
using Look = const char* (*)(const char* from, const char* end);

/// From here over all bytes of the class, and over what `Next` lets pass.
template <const Class& Plain, Look Next>
const char* run(const char* from, const char* end) {
    while (true) {
        while (from != end && in(Plain, *from)) ++from;
        const char* next = from == end ? nullptr : Next(from, end);
        if (next == nullptr) return from;
        from = next;
    }
}

// ---- words -----------------------------------------------------------------------------------

inline constexpr Class word_plain = all_but(" \t\n\r\xC2\",");
inline const char* past_comma(const char* from, const char* end) {
    if (*from == ',') return at_list_comma(from, end) ? nullptr : from + 1;
    return *from == '\xC2' && !at_hard_blank(from, end) ? from + 1 : nullptr;
}

inline constexpr Class word_first = all_but(" \t\n\r\"()#");

/// A `+` or an arrow that stands alone is no word.
inline bool at_joint(const char* from, const char* end) {
    const std::string_view rest(from, static_cast<std::size_t>(end - from));
    for (const std::string_view joint : {"+", "->", "→"}) {
        if (rest.starts_with(joint) && edge(from + joint.size(), end) != nullptr) return true;
    }
    return false;
}

inline const char* word(const char* from, const char* end) {
    if (from == end || !in(word_first, *from) || at_hard_blank(from, end)) return nullptr;
    const bool odd = *from == '+' || *from == '-' || *from == '\xE2';
    if ((odd && at_joint(from, end)) || at_list_comma(from, end)) return nullptr;
    return run<word_plain, past_comma>(from, end);
}

inline constexpr Class form_plain = all_but(" \t\n\r\xC2\"(),");
inline constexpr Class form_first = all_but(" \t\n\r\"()#,");

inline const char* form_word(const char* from, const char* end) {
    if (from == end || !in(form_first, *from) || at_hard_blank(from, end)) return nullptr;
    return run<form_plain, past_comma>(from, end);
}

inline constexpr Class unit_plain = all_but(" \t\n\r\xC2\"(),");
inline const char* past_letter(const char* from, const char* end) {
    return *from == '\xC2' && !at_hard_blank(from, end) ? from + 1 : nullptr;
}
inline constexpr Class unit_first = all_but(" \t\n\r\"(),#0123456789+-");

/// A word that may stand where a unit belongs.
inline const char* unit_word(const char* from, const char* end) {
    if (from == end || !in(unit_first, *from) || at_hard_blank(from, end)) return nullptr;
    if (std::string_view(from, static_cast<std::size_t>(end - from)).starts_with("–")) return nullptr;
    return run<unit_plain, past_letter>(from, end);
}

inline constexpr Class formula_plain = all_but(" \t\n\r\xC2\",");
inline const char* formula(const char* from, const char* end) {
    if (from == end) return nullptr;
    if (!(*from >= 'A' && *from <= 'Z') && *from != '(' && *from != '[') return nullptr;
    return run<formula_plain, past_letter>(from, end);
}

/// Letters, digits and `+`.
inline const char* code(const char* from, const char* end) {
    const auto fits = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '+';
    };
    const char* stop = std::find_if_not(from, end, fits);
    return stop == from ? nullptr : stop;
}

// ---- whole lines -----------------------------------------------------------------------------

inline constexpr Class line_plain = all_but(" \t\n\r\xC2");
inline const char* past_blanks(const char* from, const char* end) {
    if (at_end_of_statement(from, end)) return nullptr;
    return at_blank(from, end) ? skip_gap(from, end) : from + 1;
}

/// Everything up to the blanks before the comment or the end of the line; at least one character.
inline const char* line_text(const char* from, const char* end) {
    if (at_end_of_statement(from, end)) return nullptr;
    return run<line_plain, past_blanks>(from, end);
}

inline const char* rest_of_line(const char* from, const char* end) {
    while (!at_line_end(from, end)) ++from;
    return from;
}

/// To the last thing that is not blank.
inline const char* printed_text(const char* from, const char* end) {
    const char* last = from;
    while (!at_line_end(from, end)) {
        if (at_blank(from, end))
            from = skip_gap(from, end);
        else
            last = ++from;
    }
    return last;
}

inline constexpr Class quoted_plain = all_but("\"\n\r");
inline const char* inside_quotes(const char* from, const char* end) {
    while (from != end && in(quoted_plain, *from)) ++from;
    return from;
}

/// ` from "`: where a source begins.
inline bool at_source(const char* from, const char* end) {
    constexpr std::string_view word = "from";
    const char* next = skip_gap(from, end);
    if (next == from || !std::string_view(next, static_cast<std::size_t>(end - next)).starts_with(word)) return false;
    const char* quote = skip_gap(next + word.size(), end);
    if (quote == next + word.size() || quote == end || *quote != '"') return false;
    const char* close = inside_quotes(quote + 1, end);
    return close != end && *close == '"';
}

inline constexpr Class words_plain = all_but(" \t\n\r\xC2,");
inline const char* past_remark(const char* from, const char* end) {
    return at_list_comma(from, end) || at_source(from, end) ? nullptr : past_blanks(from, end);
}

inline const char* words(const char* from, const char* end) {
    if (from == end || *from == '"' || past_remark(from, end) == nullptr) return nullptr;
    return run<words_plain, past_remark>(from, end);
}

/// The longest line, in characters, that is read by more than `line_text`.
inline constexpr std::size_t longest_line = 4096;

inline const char* more_than_longest(const char* from, const char* end) {
    if (static_cast<std::size_t>(end - from) <= longest_line) return nullptr;
    if (std::memchr(from, '\n', longest_line + 1) != nullptr) return nullptr;
    std::size_t count = 0;
    for (const char* next = from; count <= longest_line; next += length_of_character(*next), ++count) {
        if (next >= end || at_line_end(next, end)) return nullptr;
    }
    return from;
}

}  // namespace scruple::grammar::scan
