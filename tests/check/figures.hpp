// SPDX-License-Identifier: MIT
// Reading figures out of checked solutions and out of reference rows.
#pragma once

#include <string>
#include <string_view>

#include "scruple/check/contents.hpp"
#include "support/csv.hpp"
#include "workspace.hpp"

namespace scruple::test {

/// A recipe of these lines, checked beside the library; must give no diagnostics. It is called `Trial`.
class Trial {
  public:
    explicit Trial(const std::string& lines);

    [[nodiscard]] const check::Model& model() const { return workspace_.model(); }
    /// What the solution holds of a chemical, all its forms together as they stand in the recipe.
    [[nodiscard]] double g_per_l(const std::string& chemical) const;
    [[nodiscard]] double mol_per_l(const std::string& chemical) const;
    /// The dose of the n-th ingredient line.
    [[nodiscard]] check::Dose dose(std::size_t n) const;
    [[nodiscard]] double makes_ml() const;

  private:
    [[nodiscard]] check::Content of(const std::string& chemical) const;
    Workspace workspace_;
    check::Id section_ = check::none;
};

/// The one row whose `column` contains `words`; fails the test where there is none, or several.
[[nodiscard]] Row row_with(const std::vector<Row>& rows, const std::string& column, std::string_view words);

/// The first number in a text: 18.0 from `18.0 mol/L`.
[[nodiscard]] double first_number(const std::string& text);

/// Whether a value is what a figure was rounded from: within half a unit of the last digit it is printed with.
[[nodiscard]] bool rounds_to(double value, const std::string& printed);

}  // namespace scruple::test
