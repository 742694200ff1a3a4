// SPDX-License-Identifier: MIT
#include "slips.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <span>
#include <vector>

#include "scruple/quantity/unit.hpp"

namespace scruple::check {
namespace {

using quantity::Dimension;
using quantity::Unit;
using Words = std::span<const std::string>;

/// Words of a line; a semicolon is as good as the comma that was meant.
std::vector<std::string> words_of(std::string_view line) {
    std::vector<std::string> words;
    while (!line.empty()) {
        const auto end = std::min(line.find_first_of(" \t"), line.size());
        if (end > 0) words.emplace_back(line.substr(0, end));
        if (!words.empty() && words.back().ends_with(';')) words.back().pop_back();
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    std::erase_if(words, [](const std::string& word) { return word.empty(); });
    return words;
}

std::string joined(Words words) {
    return fmt::format("{}", fmt::join(words, " "));
}

/// A number and its unit at the beginning of some words: `5 g`, `5g`, `2 fl oz us`.
struct Measure {
    std::size_t words = 0;  ///< how many of them; 0 where they begin otherwise
    Unit unit = Unit::none;
    [[nodiscard]] bool is(Dimension dimension) const {
        return words > 0 && quantity::info(unit).dimension == dimension;
    }
};

Measure measure_at(Words words) {
    if (words.empty()) return {};
    const auto& first = words.front();
    const auto digits = std::min(first.find_first_not_of("0123456789./½¼¾"), first.size());
    if (digits == 0 || !((first[0] >= '0' && first[0] <= '9') || static_cast<unsigned char>(first[0]) >= 0x80))
        return {};
    const bool apart = digits == first.size();
    std::string spelling = first.substr(digits);
    Measure longest;
    for (std::size_t n = 1; n <= std::min<std::size_t>(words.size(), 4); ++n) {
        if (n > 1) spelling += (spelling.empty() ? "" : " ") + words[n - 1];
        const auto unit = apart && n == 1 ? Unit::none : quantity::find_unit(spelling);
        if (unit != Unit::none) longest = {n, unit};
    }
    return longest;
}

bool begins_detail(Words words) {
    constexpr std::string_view beginnings[] = {"until ",   "a pinch now", "not above ", "by conversion",
                                               "optional", "slowly",      "stirring",   "by "};
    const auto text = joined(words);
    return std::ranges::any_of(beginnings, [&](std::string_view word) { return text.starts_with(word); });
}

std::string line_of(Words name, Words amount, std::string_view rest) {
    return fmt::format("{}   {}{}", joined(name), joined(amount), rest);
}

/// `5 g metol`, `5 g of metol`
std::string amount_first(Words words) {
    const auto measure = measure_at(words);
    auto name = words.subspan(measure.words);
    if (measure.words > 0 && !name.empty() && name.front() == "of") name = name.subspan(1);
    const bool plain = !name.empty() && joined(name).find_first_of("0123456789,\"") == std::string::npos;
    return measure.words > 0 && plain ? line_of(name, words.first(measure.words), "") : "";
}

/// `water at 20 C 750 ml`
std::string warmth_first(Words name, Words warmth, Words rest) {
    const auto amount = measure_at(rest);
    if (name.size() < 2 || name.back() != "at" || amount.words == 0 || amount.words != rest.size()) return {};
    return line_of(name.first(name.size() - 1), rest, " at " + joined(warmth));
}

/// What is behind a name and an amount, and does not fit there.
std::string after_amount(Words name, Words amount, Words rest) {
    if (rest.empty()) return {};
    const auto& first = rest.front();
    const auto measure = measure_at(rest);
    if (first.starts_with('(') && rest.back().ends_with(')'))
        return fmt::format("{} {}   {}", joined(name), joined(rest), joined(amount));
    if (measure.is(Dimension::temperature) && measure.words == rest.size())
        return line_of(name, amount, " at " + joined(rest));
    return begins_detail(rest) ? line_of(name, amount, ", " + joined(rest)) : "";
}

}  // namespace

std::string mended(std::string_view line) {
    const auto all = words_of(line);
    const Words words(all);
    if (auto text = amount_first(words); !text.empty()) return text;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto measure = measure_at(words.subspan(i));
        if (measure.words == 0) continue;
        std::vector<std::string> name(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(i));
        const auto amount = words.subspan(i, measure.words);
        const auto rest = words.subspan(i + measure.words);
        if (measure.is(Dimension::temperature)) return warmth_first(name, amount, rest);
        const bool comma = name.back().ends_with(',');
        if (comma) name.back().pop_back();
        if (comma && rest.empty()) return line_of(name, amount, "");
        return after_amount(name, amount, rest);
    }
    return {};
}

}  // namespace scruple::check
