// SPDX-License-Identifier: MIT
#include "loose_date.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <optional>
#include <utility>

namespace scruple::check {
namespace {

constexpr std::array<std::string_view, 12> months{"jan", "feb", "mar", "apr", "may", "jun",
                                                  "jul", "aug", "sep", "oct", "nov", "dec"};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// A figure, or the name of a month.
struct Piece {
    int value = 0;
    std::size_t digits = 0;  ///< 0 for a month in letters
};

/// 1 to 12 for `Nov`, `november`, `Sept.`; 0 for another word.
int month_called(std::string_view word) {
    if (word.size() < 3) return 0;
    std::string beginning(word.substr(0, 3));
    std::ranges::transform(beginning, beginning.begin(), [](char c) { return static_cast<char>(c | 0x20); });
    const auto found = std::ranges::find(months, beginning);
    return found == months.end() ? 0 : static_cast<int>(found - months.begin()) + 1;
}

std::size_t run_of(std::string_view text, bool (*fits)(char)) {
    return static_cast<std::size_t>(std::ranges::find_if_not(text, fits) - text.begin());
}

/// One piece at the beginning, which is taken off; `5th` is 5.
std::optional<Piece> take_piece(std::string_view& text) {
    const auto digits = run_of(text, is_digit);
    const auto letters = run_of(text.substr(digits), is_letter);
    Piece piece{.value = 0, .digits = digits};
    if (digits == 0) {
        piece.value = month_called(text.substr(0, letters));
        if (piece.value == 0) return std::nullopt;
    } else if (digits > 4 || (letters != 0 && letters != 2)) {
        return std::nullopt;
    } else {
        for (const char c : text.substr(0, digits)) piece.value = piece.value * 10 + (c - '0');
    }
    text.remove_prefix(digits + letters);
    return piece;
}

/// What parts two pieces: a mark, or blanks with perhaps a comma or a point before them.
std::size_t parting(std::string_view text) {
    std::size_t length = 0;
    while (length < text.size() && std::string_view("/.-, \t").find(text[length]) != std::string_view::npos) ++length;
    return length;
}

void add_day(std::vector<std::string>& days, int year, int month, int day) {
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok()) return;
    auto text = fmt::format("{:04}-{:02}-{:02}", year, month, day);
    if (std::ranges::find(days, text) == days.end()) days.push_back(std::move(text));
}

/// `26` is of this century: nobody logs what was mixed before there were such files.
int whole_year(const Piece& piece) {
    return piece.digits == 4 ? piece.value : 2000 + piece.value;
}

std::vector<std::string> days_of(const std::array<Piece, 3>& pieces) {
    std::vector<std::string> days;
    const auto& [first, second, third] = pieces;
    const bool is_no_year = third.digits == 3;
    if (is_no_year) return days;
    if (first.digits == 4) {
        add_day(days, first.value, second.value, third.value);
    } else if (first.digits == 0) {
        add_day(days, whole_year(third), first.value, second.value);
    } else if (second.digits == 0) {
        add_day(days, whole_year(third), second.value, first.value);
    } else {
        add_day(days, whole_year(third), second.value, first.value);
        add_day(days, whole_year(third), first.value, second.value);
    }
    return days;
}

/// `2026-11-05`: whether there is such a day is another question.
bool as_here(std::string_view written) {
    return written.size() == 10 && written[4] == '-' && written[7] == '-';
}

}  // namespace

LooseDate read_loose_date(std::string_view line) {
    std::array<Piece, 3> pieces;
    std::size_t read = 0;
    std::size_t length = 0;
    bool in_words = false;
    for (auto rest = line; read < pieces.size(); rest.remove_prefix(parting(rest))) {
        const auto piece = take_piece(rest);
        // A year has two digits or four: in `3 Dec  6 films` the 6 is none.
        const bool year = read + 1 < pieces.size() || pieces[0].digits == 4 || (piece && piece->digits > 1);
        if (!piece || !year) break;
        pieces[read++] = *piece;
        in_words = in_words || piece->digits == 0;
        length = line.size() - rest.size();
    }
    const auto written = line.substr(0, length);
    if (as_here(written)) return {};
    if (read < pieces.size()) return in_words && read == 2 ? LooseDate{length, {}} : LooseDate{};
    const bool marked = written.find_first_of("/.-") != std::string_view::npos;
    return marked || in_words ? LooseDate{length, days_of(pieces)} : LooseDate{};
}

}  // namespace scruple::check
