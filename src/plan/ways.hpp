// SPDX-License-Identifier: MIT
// The ways to a chemical that is not there, found and ranked in one place: for cards, for recipe text, for the log and
// for shopping.
#pragma once

#include <string>
#include <vector>

#include "offers.hpp"
#include "scruple/check/making.hpp"
#include "stock.hpp"

namespace scruple::plan {

/// What there is to take from. Without a stock nothing is known of it, and every way counts as open.
struct Shelf {
    const Stock* stock = nullptr;
    const std::vector<Offer>* offers = nullptr;  ///< what can be bought besides
    std::vector<Ware> missing{};                 ///< never taken, whatever the stock says
    check::Id making = check::none;              ///< the solution that is mixed, which cannot go into itself
};

struct Way {
    /// In the order in which they are taken: from the least work and doubt to the most.
    enum class Kind : std::uint8_t {
        form,        ///< another form of the chemical, weighed mole for mole
        percent,     ///< a percent solution of it
        solution,    ///< a solution of the workspace that holds it alone
        liquid,      ///< the form that is sold as a liquid
        conversion,  ///< made at the bench
        advice       ///< a conversion that is told and not worked
    } kind = Kind::form;
    enum class Supply : std::uint8_t { enough, unknown, to_buy, wanting } supply = Supply::unknown;

    Amount from{};                       ///< form, percent, liquid: how much of what
    check::Id solution = check::none;    ///< solution …
    check::Exact ml{};                   ///< … and how much of it
    check::Id conversion = check::none;  ///< conversion, advice
    std::vector<Amount> reagents{};      ///< what a conversion takes, each in the form that there is
    std::string lacking{};               ///< `10 g sodium hydroxide on hand, 12.5 g needed`
};

/// All ways to so much of a chemical, best first: those for which all is on hand before the others, then by kind; of
/// several conversions the user's own, then one for the very form, then as they are written.
[[nodiscard]] std::vector<Way> ways_to(const check::Model& model, const Shelf& shelf, const Amount& wanted);

/// The conversions among them; for a product that a line wants made.
[[nodiscard]] std::vector<Way> conversions_to(const check::Model& model, const Shelf& shelf, const Amount& wanted);

/// Whether a way is a conversion that a line allows: the one that was settled on, or one from what the line names.
[[nodiscard]] bool is_allowed(const check::Model& model, const check::Addition& line, const Way& way);

/// Takes from the stock what a way needs.
void take(Stock& stock, const Way& way);

/// `sodium carbonate (monohydrate) 46.8 g`, `made from 8.38 g ascorbic acid and 4.16 g sodium bicarbonate`
[[nodiscard]] std::string way_words(const check::Model& model, const Way& way);

/// `46.8 g`, as its ware is counted
[[nodiscard]] std::string measure_words(const Amount& amount);

/// Chemicals that do a like thing, and are never taken for it: the sodium for the potassium salt with as many moles of
/// the same anion, and alkalis of the same family (mild, carbonate, caustic), for which no figure follows. Of a known
/// stock only those on hand. Each a sentence that says so.
[[nodiscard]] std::vector<std::string> stand_ins(const check::Model& model, const Shelf& shelf, const Amount& wanted);

}  // namespace scruple::plan
