// SPDX-License-Identifier: MIT
#include "demand.hpp"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <nlohmann/json.hpp>

#include "scruple/text/source.hpp"

namespace fuzz {
namespace {

void demand_utf8(std::string_view what, std::string_view text) {
    demand(scruple::text::first_invalid_byte(text) == std::string_view::npos, what, text);
}

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte < 0x20 && c != '\n') || byte == 0x7F;
}

}  // namespace

void demand(bool holds, std::string_view what, std::string_view found) {
    if (holds) return;
    std::cerr << "It does not hold: " << what << '\n' << found << '\n';
    std::abort();
}

void demand_text(std::string_view what, std::string_view text) {
    demand_utf8(what, text);
    demand(text.ends_with('\n'), what, text);
    demand(std::ranges::none_of(text, is_control), what, text);
}

void demand_page(std::string_view what, std::string_view page) {
    demand_utf8(what, page);
    demand(page.starts_with("<!DOCTYPE html>") && page.ends_with("</html>\n"), what, page);
}

void demand_json(std::string_view what, std::string_view text) {
    demand_utf8(what, text);
    demand(nlohmann::json::accept(text), what, text);
}

}  // namespace fuzz
