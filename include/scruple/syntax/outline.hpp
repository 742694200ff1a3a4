// SPDX-License-Identifier: MIT
// What must be known of a file before its lines are read: its headings.
#pragma once

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// A heading, and the statements under it up to the next one.
struct OutlinedBlock {
    Block block;
    bool bad = false;      ///< as Heading has it
    bool mixes = false;    ///< of a recipe: a statement under it is an Ingredient or a Mix
    Index statement = 0;   ///< of the heading; those under it come next
    Index end = 0;         ///< of the statements under it
    Span span{}, title{};  ///< of the heading, and of the name in it; empty where it has none
    Span size{};           ///< as Heading has it
    friend bool operator==(const OutlinedBlock&, const OutlinedBlock&) = default;
};

struct Outline {
    std::vector<OutlinedBlock> blocks;
    Index before = 0;  ///< statements before the first heading
    friend bool operator==(const Outline&, const Outline&) = default;
};

/// What outline_of(parse(source)) gives, in a fraction of the time and of the memory: of most lines no more than the
/// first word is looked at. What it takes is what parse() takes.
[[nodiscard]] Outline outline(const text::Source& source);
[[nodiscard]] Outline outline_of(const Tree& tree);

/// Whether it is a solution of the recipe above it: a part, a bath, a working solution, a replenisher.
[[nodiscard]] bool is_of_recipe(Block block);
/// Whether all that stands under headings is recipes and their solutions.
[[nodiscard]] bool has_recipes_only(const Outline& outline);

}  // namespace scruple::syntax
