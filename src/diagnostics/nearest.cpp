// SPDX-License-Identifier: MIT
#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

#include "scruple/diagnostics/diagnostic.hpp"
#include "scruple/text/utf8.hpp"

namespace scruple::diagnostics {
namespace {

// Longer words are no slip of the pen, and comparing them costs the square of their length.
constexpr std::size_t longest_word = 64;

constexpr std::array<std::pair<std::u32string_view, std::u32string_view>, 6> british_to_american = {{
    {U"sulph", U"sulf"},
    {U"aluminium", U"aluminum"},
    {U"caesium", U"cesium"},
    {U"haem", U"hem"},
    {U"colour", U"color"},
    {U"litre", U"liter"},
}};

char32_t lower_case(char32_t c) {
    if (c < 0x80) return c >= U'A' && c <= U'Z' ? c + (U'a' - U'A') : c;
    return static_cast<char32_t>(utf8proc_tolower(static_cast<utf8proc_int32_t>(c)));
}

std::u32string lower_case(std::string_view word) {
    std::u32string result;
    result.reserve(std::min(word.size(), longest_word + 1));
    while (!word.empty() && result.size() <= longest_word) {
        const text::CodePoint here = text::first_code_point(word);
        result += lower_case(here.value);
        word.remove_prefix(here.length);
    }
    return result;
}

// The same for two spellings of the same word, so that only slips are counted.
std::u32string folded(std::string_view word) {
    std::u32string result = lower_case(word);
    for (const auto& [british, american] : british_to_american) {
        for (auto at = result.find(british); at != std::u32string::npos; at = result.find(british, at + 1)) {
            result.replace(at, british.size(), american);
        }
    }
    return result;
}

std::size_t slips_allowed(std::size_t length) {
    if (length < 3) return 0;
    if (length < 6) return 1;
    return length < 12 ? 2 : 3;
}

// Damerau and Levenshtein's distance: letters put in, left out, changed, or two neighbours exchanged
// (each stretch edited once). Gives up with `most` + 1 where it must be more, and so only looks at
// places in the two words that lie at most `most` apart.
std::size_t slips(std::u32string_view a, std::u32string_view b, std::size_t most) {
    if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most) return most + 1;
    std::array<std::array<std::size_t, longest_word + 2>, 3> rows{};
    for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        auto& row = rows[i % 3];
        const auto& above = rows[(i + 2) % 3];
        const auto& two_above = rows[(i + 1) % 3];
        const std::size_t from = i > most ? i - most : 1;
        const std::size_t to = std::min(b.size(), i + most);
        row[from - 1] = from == 1 ? i : most + 1;
        std::size_t least = row[from - 1];
        for (std::size_t j = from; j <= to; ++j) {
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] == b[j - 1] ? 0u : 1u)});
            const bool exchanged = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (exchanged) row[j] = std::min(row[j], two_above[j - 2] + 1);
            least = std::min(least, row[j]);
        }
        row[to + 1] = most + 1;
        if (least > most) return most + 1;
    }
    return rows[a.size() % 3][b.size()];
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string_view>& known) {
    const std::u32string mistyped = folded(word);
    if (mistyped.empty() || mistyped.size() > longest_word) return {};
    const std::size_t allowed = slips_allowed(mistyped.size());
    // Between equals the word itself wins, then the same first letter, then the alphabet: the order of `known` does
    // not count.
    std::tuple<std::size_t, bool, bool, std::string_view> best{allowed + 1, true, true, {}};
    for (const std::string_view candidate : known) {
        const std::u32string spelling = folded(candidate);
        if (spelling.empty() || spelling.size() > longest_word) continue;
        const std::size_t distance = slips(mistyped, spelling, allowed);
        if (distance > allowed) continue;
        best = std::min(best, {distance, candidate != word, spelling[0] != mistyped[0], candidate});
    }
    return std::string(std::get<std::string_view>(best));
}

}  // namespace scruple::diagnostics
