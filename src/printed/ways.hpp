// SPDX-License-Identifier: MIT
// All the ways there are to read a page, with what speaks for each before its columns are looked at.
#pragma once

#include <string>
#include <vector>

#include "reading.hpp"

namespace scruple::printed {

/// The lines that give the volume of a solution in a column.
struct VolumeLines {
    std::vector<const Line*> lines;  ///< the one to make up to; else all water and other liquids, which add up
    bool made_up = false;            ///< there is one to make up to
};

struct Layout {
    std::vector<Column> columns;
    std::vector<std::vector<VolumeLines>> volumes;  ///< of each solution, in each column
    std::vector<Known> lines;                       ///< of the page's ingredients, in their order
    Known water;                                    ///< a liquid, for what its lines come to
};

[[nodiscard]] Layout layout_of(const check::Model& model, const Page& page);

/// What a column makes of a solution in ml; 0 where it does not say.
[[nodiscard]] double volume_of(const Layout& layout, std::size_t solution, std::size_t column, const Shared& shared);

/// Whether `word`, behind a chemical's name, means that form: `cryst`, `dried`.
[[nodiscard]] bool is_called(const check::Form& form, const std::string& word);

/// Every combination that the page leaves open, `reading` lines kept to. What is not open is not varied.
[[nodiscard]] std::vector<Shared> shared_readings(const Page& page, const Layout& layout,
                                                  const std::vector<check::ReadingByHand>& by_hand);

}  // namespace scruple::printed
