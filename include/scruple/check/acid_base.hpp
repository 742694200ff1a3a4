// SPDX-License-Identifier: MIT
// All acids and bases of a workspace in one table: what its chemicals fall into in water.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/chemistry/constant.hpp"
#include "scruple/chemistry/speciation.hpp"

namespace scruple::check {

/// How far a pK may be off where its line does not say.
inline constexpr double usual_give_or_take = 0.02;

struct AcidBase {
    /// A constant of the text, and where it comes from.
    struct Constant {
        chemistry::Constant value;
        std::string text;        ///< `HCO3- -> CO3-2 + H+`
        std::uint32_t chemical;  ///< whose block says it
    };
    /// log K of a species is the sum of −weight · pK over these.
    struct Weighed {
        std::uint32_t constant;
        int weight;
    };
    /// An ion or a molecule in water.
    struct Known {
        std::string_view text;
        chemistry::Species species;  ///< its component is a number of this table's; log_k is left at 0
        std::vector<Weighed> constants;
        std::string key{};  ///< atoms and charge, as ion_key() says
    };
    struct Pair {
        std::uint32_t one, other;  ///< of known
        double epsilon, give_or_take;
    };
    struct Gas {
        std::uint32_t chemical;  ///< whose block says that it escapes
        std::uint32_t known;
        chemistry::Constant constant;
        double in_air_atm;
    };
    /// What a mole of a chemical brings: so many of that ion or molecule.
    struct Brings {
        std::uint32_t known;
        int coefficient;
    };
    static constexpr std::uint32_t no_salt = 0xFFFFFFFF;
    struct Chemical {
        std::vector<Brings> brings;
        std::string missing;  ///< `Cu+2`, of which nothing is known; empty where all is known
        /// The first chemical that brings what this one brings as a whole, as an ion with less H+; `no_salt`: none.
        std::uint32_t salt = no_salt;
    };

    std::vector<Constant> constants;
    std::vector<Known> known;
    std::vector<Pair> pairs;
    std::vector<Gas> gases;
    std::vector<Chemical> chemicals;  ///< by the model's ids
    std::uint32_t components = 0;
};

}  // namespace scruple::check
