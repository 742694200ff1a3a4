// SPDX-License-Identifier: MIT
#include "typed.hpp"

#include <fmt/format.h>

#include "scruple/quantity/unit.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::cli {
namespace {

bool is_clear_ingredient(const std::string& line) {
    const syntax::Tree tree = syntax::parse({"", line});
    if (tree.statements.size() != 1) return false;
    const auto* ingredient = std::get_if<syntax::Ingredient>(&tree.statements.front().node);
    if (ingredient == nullptr || ingredient->quantities.count != 1) return false;
    return !tree.ranges[ingredient->quantities.first].low.loose();
}

bool is_plain_number(const std::string& word) {
    return word.find_first_not_of("0123456789.,") == std::string::npos;
}

/// Known, or as short as one (`gm`), so that the parser says what to write instead.
bool is_like_unit(const std::string& word) {
    constexpr std::size_t longest_mistake = 3;
    return quantity::find_unit(word) != quantity::Unit::none || quantity::find_ambiguous(word) != nullptr ||
           word.size() <= longest_mistake;
}

}  // namespace

std::vector<std::string> words_of(const std::string& typed) {
    std::vector<std::string> result(1);
    for (const char c : typed) {
        if (c != ' ') {
            result.back() += c;
        } else if (!result.back().empty()) {
            result.emplace_back();
        }
    }
    return result;
}

std::string as_recipe_line(const std::string& typed) {
    const std::vector<std::string> words = words_of(typed);
    const auto turned = [&](std::size_t amount) {
        const auto middle = words.begin() + static_cast<std::ptrdiff_t>(amount);
        return fmt::format("{} {}", fmt::join(middle, words.end(), " "), fmt::join(words.begin(), middle, " "));
    };
    if (is_clear_ingredient(typed)) return typed;
    for (std::size_t amount = 1; amount < words.size() && amount <= 5; ++amount)
        if (is_clear_ingredient(turned(amount))) return turned(amount);
    if (words.size() < 3 || words[0].find_first_of("0123456789") == std::string::npos) return typed;
    const bool has_unit = !is_plain_number(words[0]) || is_like_unit(words[1]);
    return turned(has_unit ? 2 : 1);
}

}  // namespace scruple::cli
