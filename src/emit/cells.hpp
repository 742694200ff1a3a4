// SPDX-License-Identifier: MIT
// A statement as the cells of a row: what stands in columns when recipe text is set out.
#pragma once

#include <string>
#include <vector>

#include "scruple/syntax/tree.hpp"

namespace scruple::emit {

/// Rows of one shape in one block share their columns.
enum class Shape : std::uint8_t {
    as_it_stands,  ///< what could not be read
    heading,
    line,        ///< a step: no columns
    fact,        ///< keyword | the rest
    form,        ///< keyword | name | the rest
    ingredient,  ///< name (and `to make`) | amount and the rest
    price,       ///< name | pack | price
    process,     ///< name | time and the rest
    log,         ///< date | what happened | the rest
    plan         ///< when | what
};

struct Row {
    Shape shape = Shape::line;
    std::vector<text::Span> cells;  ///< one after the other, blanks between them belong to none
};

[[nodiscard]] Row row_of(const text::Source& source, const syntax::Tree& tree, const syntax::Statement& statement);

}  // namespace scruple::emit
