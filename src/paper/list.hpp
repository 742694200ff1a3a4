// SPDX-License-Identifier: MIT
// A list of things on paper: a title, headings, and items with what hangs below each.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "column.hpp"

namespace scruple::paper {

inline constexpr Style list_title{26, true};
inline constexpr Style list_amount{20, true};
inline constexpr Style list_what{16, false};
inline constexpr double list_cost_width = 110;

class ListColumn {
  public:
    ListColumn(const Type& type, double width) : column_(type, width) {}

    [[nodiscard]] const Column& column() const { return column_; }

    void add(Block block, double before);
    void title(const std::string& words, const std::vector<std::string>& remarks);
    void heading(std::string_view words);
    /// A head and what hangs below it, with a rule under all of it.
    void item(Block head, double indent, const std::vector<std::string>& remarks,
              const std::vector<std::string>& because);
    /// Under a heading, each with a mark; nothing where there is none.
    void warnings(std::string_view heading, const std::vector<std::string>& warnings);

    [[nodiscard]] Blocks take() { return std::move(blocks_); }

  private:
    Column column_;
    Blocks blocks_;
};

}  // namespace scruple::paper
