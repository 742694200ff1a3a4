// SPDX-License-Identifier: MIT
// What a finished solution holds: chemicals, ions, and which other solutions of the workspace are the same.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// Solutions are the same where the amounts of everything in them differ by no more than this: what a card lets a
/// balance round off without a word.
inline constexpr int most_percent_apart = 1;

struct SpeciesRow {
    std::string name;  ///< `CO3-2`, or the chemical's name where it is not known to fall into ions
    bool ion = false;
    double g_per_l = 0, mol_per_l = 0;
};

struct SameSolution {
    std::string name;                    ///< `Heron working`, with its variant
    double percent_apart = 0;            ///< of what differs most
    bool of_the_same_chemicals = false;  ///< else it becomes the same when its chemicals have dissolved and settled
};

struct ContentsSheet {
    std::string recipe, section, variant;
    std::vector<ContentRow> chemicals;
    std::optional<PhRow> ph;          ///< none for water alone
    std::vector<SpeciesRow> species;  ///< every salt taken apart whole; acids and bases not settled with each other
    std::vector<SameSolution> same;
    std::vector<std::string> left_out;  ///< lines that are optional or have no amount yet
};

/// For the section, variant and temperature of the request, with what is to be met in other ways met so. A Refusal
/// where it cannot be.
[[nodiscard]] std::variant<ContentsSheet, Refusal> contents_sheet(const check::Model& model,
                                                                  const CardRequest& request);

}  // namespace scruple::plan
