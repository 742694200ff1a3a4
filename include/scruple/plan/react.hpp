// SPDX-License-Identifier: MIT
// A reaction with so much of this and that: what limits it, what it makes, what is left.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/chemistry/balance.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// A chemical in a form, or a formula alone.
struct Substance {
    std::string name;          ///< `borax (decahydrate)`, or the formula
    std::string formula_text;  ///< `Na2B4O7·10H2O`
    chemistry::Formula formula;
    check::Id chemical = check::none, form = check::none;
};

[[nodiscard]] Substance substance_of(const check::Model& model, check::Id chemical, check::Id form);
/// Where one chemical alone has a form of this formula, or one that differs in water of crystallisation only, it is
/// that one (its cautions are known), by the formula's name; of several it is the one that is a gas.
[[nodiscard]] Substance substance_of(const check::Model& model, std::string text, const chemistry::Formula& formula);

struct Reaction {
    std::vector<Substance> left, right;
    chemistry::Coefficients numbers;  ///< left, then right; empty: to be found
};

/// Some of a substance, as it is measured out: `amount` g or ml of it hold `mol`.
struct Taken {
    Substance what;
    std::string name;  ///< with its strength: `sodium hydroxide (1 mol/l)`
    check::Exact amount, grams, mol;
    std::string unit;  ///< `g`, `ml` or `mol`: of `amount`
};

/// What a line of a recipe puts in: its strength, or how pure the form is sold, is reckoned with. `grams` are pure.
[[nodiscard]] Taken taken_of(const check::Model& model, const check::Addition& addition);
/// Grams or moles of a formula.
[[nodiscard]] Taken taken_of(const Substance& what, const check::Exact& amount, bool in_moles);

/// So much of it, in the unit it was taken in.
[[nodiscard]] Figure figure_of(const Taken& taken, const check::Exact& amount);

/// All masses are of the reaction run to its end: the most that it can make.
struct Reacted {
    struct Reagent {
        Substance what;
        check::Exact number;
        bool taken = false;                    ///< how much there is of it was said; else it is used as needed
        bool limits = false;                   ///< nothing is left of it
        Figure mol, used;                      ///< used: g of the form in the reaction
        std::vector<Figure> left_over;         ///< one for each that was taken of it, in its own unit, in proportion
        std::vector<std::string> left_names;   ///< of those
        std::optional<Figure> excess_percent;  ///< more than is used
    };
    struct Product {
        Substance what;
        check::Exact number;
        Figure mol, made;           ///< g
        std::optional<Figure> gas;  ///< litres, where its form is called gas
    };
    std::string reaction;        ///< with its numbers
    bool numbers_found = false;  ///< none were said
    std::vector<Reagent> reagents;
    std::vector<Product> products;
    std::vector<std::string> lines;  ///< the sum as a person does it again on paper
    std::vector<Caution> cautions;
    std::vector<HazardRow> hazards;
};

/// For what is taken; where that is nothing, for one mole of the reaction as written. A Refusal where the reaction does
/// not balance as its numbers stand, where its numbers are not the only ones, or for something that takes no part.
[[nodiscard]] std::variant<Reacted, Refusal> react(const check::Model& model, Reaction reaction,
                                                   const std::vector<Taken>& taken);

}  // namespace scruple::plan
