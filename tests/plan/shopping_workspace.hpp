// SPDX-License-Identifier: MIT
// A workspace from recipe text, for the tests of the shopping list: parsed, checked, without faults.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <vector>

#include "scruple/check/check.hpp"
#include "scruple/plan/shopping.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::test {

/// Chemicals and films of the tests; formulas as the names say, densities invented round numbers.
inline const std::string shelf = R"(
chemical water
    form       liquid          H2O
    grade      distilled
    density    1 g/ml

chemical sodium sulfite
    form       anhydrous       Na2SO3

chemical sodium carbonate
    form       anhydrous       Na2CO3
    form       monohydrate     Na2CO3·H2O

chemical potassium bromide
    form       crystals        KBr

chemical metol
    form       sulfate         C14H20N2O6S

chemical propylene glycol
    form       liquid          C3H8O2
    density    1.04 g/ml

chemical acetic acid
    form       glacial         CH3COOH
    density    1.05 g/ml (glacial)

chemical ammonium thiosulfate
    form       crystals        (NH4)2S2O3
    density    1.25 g/ml (60 % w/w)

chemical borax
    form       decahydrate     Na2B4O7·10H2O

chemical sodium hydroxide
    form       pellets         NaOH

chemical sodium metaborate
    form       anhydrous       NaBO2

format 135
    area       80 sq in

format 120
    area       80 sq in

format 220
    area       160 sq in
)";

/// Blanks that no line break parts, as plain ones.
inline std::string plain_blanks(std::string text) {
    for (std::size_t at; (at = text.find("\u00A0")) != std::string::npos;) text.replace(at, 2, " ");
    return text;
}

class Workspace {
  public:
    /// `library`: more of what is built in.
    explicit Workspace(const std::string& recipes, const std::string& library = "")
        : sources_{text::Source{"shelf.scruple", shelf + library}, text::Source{"test.scruple", recipes}} {
        for (const auto& source : sources_) trees_.push_back(syntax::parse(source));
        checked_ = check::check({sources_, trees_, 1}, 1);
        for (const auto& diagnostic : checked_.diagnostics)
            REQUIRE_MESSAGE(diagnostics::info(diagnostic.kind).severity != diagnostics::Severity::error,
                            diagnostic.message, " in `", sources_[diagnostic.file].at(diagnostic.span), "`");
    }

    [[nodiscard]] const check::Model& model() const { return checked_.model; }
    [[nodiscard]] plan::ShoppingList list() const { return plan::shopping_list(model(), 0); }

    [[nodiscard]] check::Id solution(const std::string& normal) const { return id(model().section_names, normal); }

    /// The uses of the only plan's first line.
    [[nodiscard]] const std::vector<check::Use>& uses() const { return model().plans.front().entries.front().uses; }

  private:
    static check::Id id(const std::unordered_map<std::string, check::Id>& names, const std::string& normal) {
        const auto found = names.find(normal);
        REQUIRE_MESSAGE(found != names.end(), "no ", normal);
        return found->second;
    }

    std::array<text::Source, 2> sources_;
    std::vector<syntax::SharedTree> trees_;
    check::Checked checked_;
};

inline const plan::ChemicalNeed& need_of(const plan::ShoppingList& list, const std::string& name,
                                         const std::string& form = "") {
    for (const auto& need : list.chemicals)
        if (need.name == name && plain_blanks(need.form_name) == form) return need;
    FAIL("no ", name, " (", form, ") in the list");
    return list.chemicals.front();
}

inline const plan::SolutionNeed& solution_of(const plan::ShoppingList& list, const std::string& name) {
    for (const auto& need : list.solutions)
        if (need.name == name) return need;
    FAIL("no ", name, " in the list");
    return list.solutions.front();
}

inline bool warns(const std::vector<std::string>& warnings, const std::string& words) {
    for (const auto& warning : warnings)
        if (plain_blanks(warning).find(words) != std::string::npos) return true;
    return false;
}

inline std::string shown(const plan::Figure& figure) {
    return plain_blanks(figure.with_unit());
}

}  // namespace scruple::test
