// SPDX-License-Identifier: MIT
// What could be read in several ways, how much worse the others are, and what they would change.
#pragma once

#include "by_hand.hpp"
#include "options.hpp"

namespace scruple::printed {

/// What all questions are asked of.
struct Asked {
    const check::Model& model;
    const Page& page;
    const Layout& layout;
    const Search& search;
    Options& options;
    const std::vector<check::ReadingByHand>& by_hand;
};

[[nodiscard]] std::vector<Question> questions(const Asked& asked);

// ---- of its own, for those who ask ----

/// Whose fluid ounce, whose ounce, what `gr` is, whether a column is stronger.
[[nodiscard]] std::vector<Question> page_questions(const Asked& asked);
/// Of each line: its form, its ounce, its percent.
[[nodiscard]] std::vector<Question> line_questions(const Asked& asked);
/// What `1 : 9` means.
[[nodiscard]] std::vector<Question> dilution_questions(const Asked& asked);

/// Puts the best first and says how sure it is. `by_saying`: whether a `reading` line settles it.
enum class BySaying : std::uint8_t { no, yes };
[[nodiscard]] Question judged(Question question, BySaying by_saying);

/// The `reading` line of that kind, of one column or one chemical where it says so; nullptr where there is none.
[[nodiscard]] const check::ReadingByHand* hand_line(const Asked& asked, ByHand what, std::size_t column = 0,
                                                    check::Id chemical = check::none);
void settle_by(Question& question, const check::ReadingByHand* line);

/// `1+9`, as it is taken: by a `reading` line, else as the best reading.
[[nodiscard]] Mixture dilution_taken(const Line& line, const std::vector<check::ReadingByHand>& by_hand);

}  // namespace scruple::printed
