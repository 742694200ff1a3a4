// SPDX-License-Identifier: MIT
// Pieces of statements with their blanks set right.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/syntax/tree.hpp"

namespace scruple::emit {

inline constexpr std::string_view no_break_blank = "\u00A0";

/// One blank for every run of them (no-break ones too) and between a number and its unit; what stands in quotes
/// is left alone. Source and tree must outlive this.
class Folder {
  public:
    Folder(const text::Source& source, const syntax::Tree& tree);
    [[nodiscard]] std::string operator()(text::Span span) const;

  private:
    [[nodiscard]] std::uint32_t blank_at(std::uint32_t at) const;
    [[nodiscard]] bool touches_at(std::uint32_t at) const;

    const text::Source& source_;
    std::vector<std::uint32_t> touching_;  ///< where a unit touches its number, in order
};

}  // namespace scruple::emit
