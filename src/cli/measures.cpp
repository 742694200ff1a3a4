// SPDX-License-Identifier: MIT
#include <algorithm>

#include "call.hpp"
#include "scruple/quantity/unit.hpp"

namespace scruple::cli {
namespace {

using Words = std::vector<std::string>;

bool is_bare_number(const std::string& word) {
    return !word.empty() && word.find_first_not_of("0123456789./,") == std::string::npos;
}

bool is_unit(const std::string& words) {
    return quantity::find_unit(words) != quantity::Unit::none || quantity::find_ambiguous(words) != nullptr;
}

std::size_t longest_unit(const Words& words, std::size_t at) {
    std::size_t longest = 0;
    std::string unit;
    for (std::size_t n = 0; n < 3 && at + n < words.size(); ++n) {
        unit += (n > 0 ? " " : "") + words[at + n];
        if (is_unit(unit)) longest = n + 1;
    }
    return longest;
}

// How many words from `at` are one amount; one where it cannot be told.
std::size_t words_of_amount(const Words& words, std::size_t at) {
    std::size_t numbers = 0;
    while (at + numbers < words.size() && is_bare_number(words[at + numbers])) ++numbers;
    const std::size_t unit = numbers > 0 ? longest_unit(words, at + numbers) : 0;
    return unit > 0 ? numbers + unit : 1;
}

// `8x10 in` after the number of sheets.
std::size_t words_of_size(const Words& words, std::size_t at) {
    if (at + 1 >= words.size()) return 1;
    const bool bare_size = words[at].find_first_not_of("0123456789.x") == std::string::npos;
    const std::string& next = words[at + 1];
    return bare_size && (next == "in" || next == "cm" || next == "mm") ? 2 : 1;
}

void take_joined(Words& result, const Words& words, std::size_t& at, std::size_t count) {
    if (at >= words.size()) return;
    result.push_back(words[at++]);
    for (; count > 1; --count) result.back() += " " + words[at++];
}

}  // namespace

Words with_measures_joined(const Words& arguments) {
    Words result;
    for (std::size_t at = 0; at < arguments.size();) {
        const std::string& option = arguments[at];
        take_joined(result, arguments, at, 1);
        if (option == "--make" || option == "--area" || option == "--at") {
            take_joined(result, arguments, at, words_of_amount(arguments, at));
        } else if (option == "--sheets") {
            take_joined(result, arguments, at, 1);
            take_joined(result, arguments, at, words_of_size(arguments, at));
        }
    }
    return result;
}

}  // namespace scruple::cli
