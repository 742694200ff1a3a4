// SPDX-License-Identifier: MIT
// What must not meet, and where it is let happen.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/check/base.hpp"

namespace scruple::check {

/// One thing that may take part in a meeting.
struct Met {
    enum class What : std::uint8_t {
        role,      ///< whatever acts so
        chemical,  ///< in any form and any solution
        form,      ///< that form as it is put in, and not a solution of it
        ion        ///< an ion or molecule, with all that it becomes by taking up or giving off H+ and water
    } what = What::role;
    std::string_view text{};  ///< as written; of a role what follows `acts as`
    Id chemical = none, form = none;
    double g_per_mol = 0;               ///< of an ion
    std::vector<double> mol_per_mol{};  ///< by chemical: how much of it a mole of the chemical brings; 0 for none
};

/// One side of a meeting: any of these.
struct Side {
    std::vector<Met> any{};
    std::optional<Strength> at_least{};  ///< all of them together; nothing said: any trace
};

enum class Danger : std::uint8_t { lethal, harmful };

/// `meeting acid on sulfide`
struct Meeting {
    std::string_view name{};
    Danger danger = Danger::harmful;
    std::string_view comes{};  ///< what comes of it
    std::vector<Side> sides{};
    std::optional<double> below_ph{}, above_ph{};
    std::optional<double> warmer_than{};  ///< °C
    std::vector<Met> in_doubt{};          ///< where the pH is not known, these stand for it
    std::vector<std::string_view> cautions{}, notes{}, sources{};
    Place place{};
    bool built_in = false;
};

/// `accept acid on sulfide because "…"`
struct Acceptance {
    Id meeting = none;
    std::string_view reason{};
    Place place{};
};

/// A meeting that was found and is accepted.
struct Accepted {
    Id meeting = none;
    Id section = none;            ///< the solution in which it happens, or
    Id process = none;            ///< the process, from one bath to
    Id bath = none, next = none;  ///< … the next
    std::string what{};           ///< `citric acid` and `sodium sulfide` at pH 3.1
    std::string_view reason{};
};

}  // namespace scruple::check
