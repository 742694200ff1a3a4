// SPDX-License-Identifier: MIT
// What a printed page means: every reading that is possible, weighed, and the one that fits best.
//
// Each reading has a cost, the negative natural logarithm of how well it explains the page: of what books usually mean,
// and of how far its columns differ once both are worked out. What the page shares (whose fluid ounce a column means,
// whose ounce, what `gr` is, whether one column is stronger than the other throughout) is tried in all its
// combinations; given these the lines do not depend on one another, so each takes its best reading by itself. The best
// reading of the page is thus exact, and its time is that of the lines times the combinations, never 2 to the number of
// lines. The pH, which all lines make together, is weighed afterwards, among the best readings of each question. The
// costs are ours (docs/printed.md).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// What a line comes to under a reading.
struct LineRead {
    std::size_t line = 0;      ///< of the page
    std::size_t solution = 0;  ///< of its solutions
    std::string name;          ///< the chemical's, or as printed where none is known
    std::string strength{};    ///< `28 % v/v`, `saturated at 20 C`
    std::string form;          ///< empty where the chemical has but one
    check::Id chemical = check::none, form_id = check::none;
    std::string amount;               ///< in units of the language: `6 oz av`, of the column that is read
    std::optional<double> per_litre;  ///< g/l, of a liquid ml/l; none where the page gives no volume
    bool by_volume = false;
    std::optional<double> holds;        ///< of a solution or a liquid: g/l of the chemical itself, where it can be told
    std::vector<std::string> evidence;  ///< `the other column says 75 g, which is 0.2 % more`
    std::vector<std::string> off{};     ///< `+0.22 %`: each further column against the first
    std::string fault;                  ///< the columns disagree, and how; empty where they do not
    std::string slip;                   ///< the likely slip; empty where none explains it
};

/// One of the ways to read something, and what it would change.
struct Option {
    std::string words;                   ///< `oz of solids avoirdupois`
    double cost = 0;                     ///< above that of the best reading of the page; 0 for what is taken
    std::vector<std::string> changes{};  ///< `metol 5.7 to 5.46 g/l`
    /// What speaks against it, the most first: `the book's country 20 to 1`; what speaks for it is told so.
    std::vector<std::string> weights{};
};

enum class Verdict : std::uint8_t { by_hand, clear, likely, open };

/// What could be read in several ways.
struct Question {
    std::string about;  ///< `whose fluid ounce`
    std::size_t line = 0;
    bool of_line = false;  ///< of one line, else of the page
    Verdict verdict = Verdict::clear;
    std::vector<Option> options{};  ///< the best first
    std::string narrowed{};         ///< what a line that settles it is narrowed to: ` in column 2`, ` of acetic acid`
    std::string settle_with{};      ///< the line that settles it: `reading fl oz us because "…"`
    std::string because{};          ///< by hand: the reason
    std::string look_for{};         ///< what would tell, in the book or on the jar
};

struct Warning {
    std::string about;  ///< `mercury`
    std::string text;
};

/// One of the solutions that a page gives.
struct SolutionRead {
    std::string label{};  ///< `A`; empty where the page has but one
    std::optional<double> makes_ml{};
    std::string makes{};         ///< `80 fl oz uk`
    bool added_up = false;       ///< no volume to make up to is printed: that of its liquids is taken
    std::optional<double> ph{};  ///< at 20 °C, where all that it holds is known in water
};

/// What the page says is mixed for use: `1 part A, 1 part B, 2 parts water`.
struct ForUse {
    struct Share {
        std::size_t solution = 0;
        std::string parts;  ///< exact: `1.5`
    };
    std::vector<Share> shares{};
    std::string water{};  ///< parts; empty for none
    std::string text{};   ///< as printed
    struct Holds {
        std::string name;
        double per_litre = 0;  ///< g
    };
    std::vector<Holds> holds{};  ///< of the solution in use, each chemical once
    std::optional<double> ph{};
};

struct Settlement {
    std::string name{}, purpose{}, book{};
    std::vector<SolutionRead> solutions{};
    std::vector<ForUse> for_use{};
    std::vector<LineRead> lines{};
    std::vector<Question> questions{};
    std::vector<std::string> evidence{};  ///< of the page: `columns agree within 0.2 %`
    std::vector<std::string> notes{};     ///< of the block itself
    std::vector<std::string> not_read{};  ///< lines that are no amounts, as printed
    std::vector<Warning> warnings{};
    std::vector<std::string> faults{};  ///< `reading` lines that settle nothing
};

/// Costs as odds, which say more than logarithms: `20 to 1`.
[[nodiscard]] std::string odds(double cost);

[[nodiscard]] Settlement settle(const check::Model& model, const check::PrintedPage& typed);

}  // namespace scruple::printed
