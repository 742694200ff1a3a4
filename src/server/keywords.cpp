// SPDX-License-Identifier: MIT
#include "keywords.hpp"

namespace scruple::server {
namespace {

#include "keywords.inc"

}  // namespace

std::span<const std::string_view> block_words() {
    return all_block_words;
}

std::span<const std::string_view> fact_words() {
    return all_fact_words;
}

std::span<const std::string_view> step_words() {
    return all_step_words;
}

std::string_view word_at_the_beginning(std::string_view statement) {
    std::string_view best;
    for (const auto words : {block_words(), fact_words(), step_words()})
        for (const std::string_view word : words) {
            const bool ends =
                statement.size() == word.size() ||
                (statement.size() > word.size() && (statement[word.size()] == ' ' || statement[word.size()] == '\t'));
            if (word.size() > best.size() && statement.starts_with(word) && ends) best = word;
        }
    return best;
}

}  // namespace scruple::server
