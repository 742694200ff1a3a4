// SPDX-License-Identifier: MIT
// What is said of a printed page that was settled, for terminals, pages and recipes alike.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/printed/settle.hpp"

namespace scruple::emit::settled_words {

inline constexpr std::string_view read_heading = "As it reads best";

/// `sodium sulfite (anhydrous)`, `acetic acid (28 % w/w)`
[[nodiscard]] std::string name_of(const printed::LineRead& line);
/// `5.7 g/l`; of a solution, with what it holds of the chemical itself: `125 ml/l, 36 g/l`
[[nodiscard]] std::string per_litre(const printed::LineRead& line);
/// `Solution A makes 20 fl oz uk`
[[nodiscard]] std::string makes(const printed::SolutionRead& solution);
/// What is wrong with a line, and the likely slip.
[[nodiscard]] std::vector<std::string> faults(const printed::LineRead& line);
/// `whose ounce: oz avoirdupois is likelier`
[[nodiscard]] std::string question(const printed::Question& question);
/// `For use, 1 part A, 1 part B`, and what it holds.
[[nodiscard]] std::vector<std::string> for_use(const printed::ForUse& use);

/// A line with what belongs to it.
struct Told {
    std::string line;
    std::vector<std::string> under{};
};
/// Each group of lines under its heading, in their order; none of them empty.
struct Group {
    std::string_view heading;
    std::vector<Told> lines;
};
[[nodiscard]] std::vector<Group> groups(const printed::Settlement& settled);

}  // namespace scruple::emit::settled_words
