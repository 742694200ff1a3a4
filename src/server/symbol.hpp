// SPDX-License-Identifier: MIT
// One name and all places where it stands.
#pragma once

#include "asked.hpp"

namespace scruple::server {

struct PlaceOfName {
    FileNumber file = 0;
    text::Span span;  ///< the name alone: `Heron` of `Heron part A`, `A` of the same when the part is asked for
    bool defines = false;
};

/// What is asked about, from one of its places.
struct Symbol {
    std::string key;
    bool library = false;     ///< it is defined in no file of the user's
    bool of_section = false;  ///< a part, a bath, a working solution: its label is its name
    text::Span asked;         ///< where it was asked about
};

/// Nullopt where no name stands. On `Heron` of `Heron part A` it is the recipe, on the rest of it the part.
[[nodiscard]] std::optional<Symbol> symbol_at(const Workspace& workspace, const Asked& about);

/// In the order of the files. `spelled_so`: without the places that call a chemical by another of its names.
[[nodiscard]] std::vector<PlaceOfName> places_of(const Workspace& workspace, const Symbol& symbol, bool spelled_so);

}  // namespace scruple::server
