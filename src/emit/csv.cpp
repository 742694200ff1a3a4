// SPDX-License-Identifier: MIT
#include "csv.hpp"

namespace scruple::emit::csv {

namespace {

std::string quoted(std::string_view cell) {
    if (cell.find_first_of("\",\r\n") == std::string_view::npos) return std::string(cell);
    std::string all = "\"";
    for (const char c : cell) all += c == '"' ? "\"\"" : std::string(1, c);
    return all + "\"";
}

}  // namespace

std::string words(std::string_view text) {
    // Blanks in front are passed over by some programs before they look for a formula.
    const auto begin = text.find_first_not_of(' ');
    const bool formula =
        begin != std::string_view::npos && std::string_view("=+-@\t\r\n").find(text[begin]) != std::string_view::npos;
    return (formula ? "'" : "") + std::string(text);
}

std::string row(const std::vector<std::string>& cells) {
    std::string all;
    for (std::size_t i = 0; i < cells.size(); ++i) all += (i == 0 ? "" : ",") + quoted(cells[i]);
    return all + "\r\n";
}

}  // namespace scruple::emit::csv
