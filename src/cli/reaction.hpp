// SPDX-License-Identifier: MIT
// A reaction on the command line: names of chemicals as in recipe text, or formulas, and amounts of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "asked.hpp"
#include "scruple/plan/react.hpp"

namespace scruple::cli {

/// Cut into its pieces; formulas are read here, and every name goes to the checker beside the workspace.
class TypedReaction {
  public:
    /// Throws Stop where no reaction stands.
    TypedReaction(const std::string& reaction, const std::optional<std::string>& amounts);

    [[nodiscard]] Asked asked() const;
    /// With all names resolved; throws Stop for what is no chemical. Numbers are empty where none was typed.
    [[nodiscard]] plan::Reaction reaction(const driver::Loaded& loaded) const;
    [[nodiscard]] std::vector<plan::Taken> taken(const driver::Loaded& loaded) const;

  private:
    struct Term {
        std::optional<int> number;
        std::string what;
    };
    struct Amount {
        std::string line;     ///< the amount of a formula, or a whole line of recipe text
        std::string formula;  ///< empty for a name
    };
    static Term term(std::string piece);
    static Amount amount(const std::string& piece);
    [[nodiscard]] plan::Substance substance(const driver::Loaded& loaded, std::size_t i) const;

    std::vector<Term> terms_;  ///< left, then right
    std::size_t left_ = 0;
    std::vector<Amount> amounts_;
};

}  // namespace scruple::cli
