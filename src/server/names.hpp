// SPDX-License-Identifier: MIT
// The names of one file: which it defines, and which it mentions. From the tree alone.
#pragma once

#include <string>
#include <vector>

#include "scruple/syntax/tree.hpp"

namespace scruple::server {

/// What a name is looked up among. Chemicals, recipes and their solutions share one space.
enum class Space : std::uint8_t { substance, process, supplier, plan, bench, format, meeting, printed };

struct Occurrence {
    text::Span span;
    /// Normal; `heron part a` for `part A` within Heron. In front a digit for the space.
    std::string key;
    bool defines = false;
    bool other_name = false;    ///< an `also` of a chemical: `of` is the key of its own name
    bool by_name_only = false;  ///< in a log, a plan or a price list: what it holds makes no difference there
    std::string of{};
    std::string shown{};                          ///< of a definition: `Heron part A`
    syntax::Block block = syntax::Block::recipe;  ///< of a definition: what it is of
    std::uint32_t statement = 0;
};

struct Names {
    std::vector<Occurrence> all;
    bool global = false;  ///< has a block that lines of any other file may depend on without naming it
};

[[nodiscard]] Names names_of(const text::Source& source, const syntax::Tree& tree);

[[nodiscard]] std::string key_of(Space space, std::string_view written);
/// The names that a name may mean, by what it says: `0heron part a`, and `0heron` with words for a solution behind it.
[[nodiscard]] std::vector<std::string> meanings_of(const std::string& key);

}  // namespace scruple::server
