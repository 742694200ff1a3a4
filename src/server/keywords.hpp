// SPDX-License-Identifier: MIT
// The words of the language, as grammar/scruple.peg has them; keywords.inc is made by grammar/editors/generate.py.
#pragma once

#include <span>
#include <string_view>

namespace scruple::server {

[[nodiscard]] std::span<const std::string_view> block_words();
[[nodiscard]] std::span<const std::string_view> fact_words();
[[nodiscard]] std::span<const std::string_view> step_words();

/// The fact or step word, date word or block word that a line begins with; empty where it begins with none.
[[nodiscard]] std::string_view word_at_the_beginning(std::string_view statement);

}  // namespace scruple::server
