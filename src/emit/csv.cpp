// SPDX-License-Identifier: MIT
#include "csv.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "scruple/text/utf8.hpp"

namespace scruple::emit::csv {

namespace {

std::string in_quotes(std::string_view cell) {
    if (cell.find_first_of("\",\r\n") == std::string_view::npos) return std::string(cell);
    std::string all = "\"";
    for (const char c : cell) all += c == '"' ? "\"\"" : std::string(1, c);
    return all + "\"";
}

/// What makes a cell a formula where it stands first, in programs for Chinese and Japanese the wide signs too.
constexpr std::array<std::string_view, 8> formula_signs{"=", "+", "-", "@", "＝", "＋", "－", "＠"};
/// The same, but as the very first of a cell alone.
constexpr std::array<std::string_view, 3> blanks_of_formulas{"\t", "\r", "\n"};
/// What begins another cell, in a program that is set to something else than commas.
constexpr std::array<std::string_view, 5> separators{";", "|", "\t", "\r", "\n"};

bool stands_in(std::span<const std::string_view> all, std::string_view one) {
    return std::ranges::find(all, one) != all.end();
}

}  // namespace

std::string words(std::string_view text) {
    std::string all;
    bool begins = true;  // blanks in front are passed over by some programs before they look for a formula
    while (!text.empty()) {
        const std::string_view here = text.substr(0, text::first_code_point(text).length);
        if ((begins && stands_in(formula_signs, here)) || (all.empty() && stands_in(blanks_of_formulas, here)))
            all += '\'';
        begins = stands_in(separators, here) || (begins && here == " ");
        all += here;
        text.remove_prefix(here.size());
    }
    return all;
}

std::string row(const std::vector<std::string>& cells) {
    std::string all;
    for (std::size_t i = 0; i < cells.size(); ++i) all += (i == 0 ? "" : ",") + in_quotes(cells[i]);
    return all + "\r\n";
}

}  // namespace scruple::emit::csv
