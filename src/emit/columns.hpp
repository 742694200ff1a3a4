// SPDX-License-Identifier: MIT
// The columns in which the rows of one block stand.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "cells.hpp"

namespace scruple::emit {

/// A row whose cells have their text.
struct SetRow {
    Shape shape = Shape::line;
    std::vector<std::string> cells;
};

/// Takes all rows of a block, then sets them out.
class Columns {
  public:
    void make_room(const SetRow& row);
    [[nodiscard]] std::string line(const SetRow& row) const;

  private:
    static constexpr std::size_t all = 10;
    std::array<std::size_t, all> columns_{};
};

}  // namespace scruple::emit
