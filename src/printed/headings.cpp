// SPDX-License-Identifier: MIT
#include "headings.hpp"

#include <algorithm>
#include <array>

#include "notation.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::ranges::find(words, word) != words.end();
}

std::vector<std::string> cells_of(std::string_view line) {
    std::vector<std::string> cells(1);
    for (std::size_t at = 0; at < line.size(); ++at) {
        const std::string_view rest = line.substr(at);
        const bool parts = rest.front() == '|' || rest.front() == '\t' || rest.starts_with("  ");
        if (!parts)
            cells.back() += rest.front();
        else if (!tidied(cells.back()).empty())
            cells.emplace_back();
    }
    std::erase_if(cells, [](const std::string& cell) { return tidied(cell).empty(); });
    return cells;
}

/// A heading is made of its own words alone; `weight` and `measure` say nothing by themselves.
std::optional<Heading> heading_of(const std::string& cell) {
    Heading heading;
    bool says = false;
    for (const std::string& word : words_of(cell)) {
        if (is_one_of(word, {"measure", "measures", "weight", "weights", "system", "units", "and", "or", "in", "liquid",
                             "fluid", "formula", "version", "customary"}))
            continue;
        if (word == "metric") {
            heading.metric = says = true;
            continue;
        }
        if (const WhoseFound whose = whose_at(word); whose.length == word.size()) {
            if (whose.whose.fluid) heading.whose.fluid = whose.whose.fluid;
            if (whose.whose.ounce) heading.whose.ounce = whose.whose.ounce;
            says = true;
            continue;
        }
        const UnitFound unit = unit_at(word);
        if (unit.length < word.size()) return std::nullopt;
        heading.metric = heading.metric || is_metric(unit.unit);
        // `Grammes or c.c.`: which of them a figure is, its substance says.
        if (!is_metric(unit.unit)) heading.unit = unit.unit;
        says = true;
    }
    if (!says) return std::nullopt;
    return heading;
}

bool is_filler(std::string_view word) {
    return is_one_of(word, {"solution", "solutions", "sol", "soln", "stock", "part", "bath", "no", "number", "the",
                            "of", "working", "formula"});
}

bool is_label(std::string_view word) {
    return (word.size() == 1 && word.front() >= 'a' && word.front() <= 'f') ||
           is_one_of(word, {"i", "ii", "iii", "iv", "1", "2", "3", "4", "one", "two", "three", "four"});
}

std::optional<Solution> solution_of(std::string_view text) {
    Solution solution;
    bool named = false;
    std::size_t labels = 0;
    const std::vector<std::string> words = words_of(text);
    for (const std::string& word : words) {
        if (is_filler(word)) {
            solution.for_use = solution.for_use || word == "working";
            named = named || !is_one_of(word, {"the", "of"});
            continue;
        }
        if (!is_label(word) || ++labels > 1) return std::nullopt;
        solution.label = word.size() <= 3 ? tidied(text.substr(lower(text).rfind(word), word.size())) : word;
    }
    const bool alone =
        words.size() == 1 && labels == 1 && std::ranges::all_of(words.front(), is_letter) && words.front().size() <= 3;
    if (labels == 0) {
        if (!named || words.empty() || words.size() < 2) return std::nullopt;
        if (std::ranges::find(words, "stock") == words.end() && !solution.for_use) return std::nullopt;
    }
    if (labels == 1 && !named && !alone) return std::nullopt;
    // `Stock solution 1 part` is an amount.
    if (labels == 1 && words.back() == "part") return std::nullopt;
    return solution;
}

/// Where `A.—Water` and `Solution A: water` part; npos where they do not.
std::size_t head_ends(std::string_view line, std::size_t& skip) {
    for (const std::string_view sign : {".—", ".–", ".-", ":", "—", "–", ") ", ". "}) {
        const std::size_t at = line.find(sign);
        if (at == std::string_view::npos || at == 0) continue;
        skip = sign.size();
        return at;
    }
    return std::string_view::npos;
}

/// `Bleach` and `Sulphide bath`, behind which the first line stands.
bool is_title_of_bath(std::string_view head) {
    constexpr std::size_t longest = 3;  // words
    const std::vector<std::string> words = words_of(head);
    return !words.empty() && words.size() <= longest &&
           is_one_of(words.back(), {"bath", "bleach", "bleacher", "developer", "fixer", "toner", "reducer", "hardener",
                                    "intensifier", "solution", "redeveloper", "re-developer", "sensitiser"});
}

}  // namespace

std::vector<Heading> headings_in(std::string_view line) {
    std::vector<Heading> all;
    std::size_t others = 0;
    for (const std::string& cell : cells_of(line)) {
        if (const auto heading = heading_of(cell))
            all.push_back(*heading);
        else if (++others > 1 || !all.empty() || std::ranges::any_of(cell, [](char c) { return c >= '0' && c <= '9'; }))
            return {};
    }
    return all;
}

std::optional<Label> label_in(std::string_view line) {
    if (auto solution = solution_of(line)) return Label{std::move(*solution), {}};
    std::size_t skip = 0;
    const std::size_t at = head_ends(line, skip);
    if (at == std::string_view::npos) return std::nullopt;
    // `1. Metol` counts lines; it takes `No. 1` to count solutions.
    const std::string_view head = line.substr(0, at);
    auto solution = solution_of(head);
    if (!solution && is_title_of_bath(head)) solution = Solution{tidied(head)};
    if (!solution) return std::nullopt;
    return Label{std::move(*solution), line.substr(at + skip)};
}

std::optional<std::string> solution_named(std::string_view words) {
    std::string label;
    bool named = false;
    for (const std::string& word : words_of(words)) {
        if (is_filler(word) || is_one_of(word, {"developer", "fixer", "concentrate", "bath", "above"})) {
            named = true;
            continue;
        }
        if (!is_label(word) || !label.empty()) return std::nullopt;
        label = word;
    }
    if (!named && label.empty()) return std::nullopt;
    return label;
}

}  // namespace scruple::printed
