// SPDX-License-Identifier: MIT
#include "purposes.hpp"

#include <algorithm>
#include <array>

namespace scruple::check {
namespace {

struct Word {
    std::string_view word;
    Purpose purpose;
};
constexpr std::array words{Word{"preservative", sulfite},
                           Word{"acid", acid},
                           Word{"alum", alum},
                           Word{"fixing agent", thiosulfate},
                           Word{"alkali", alkali},
                           Word{"caustic", caustic},
                           Word{"buffer", buffer},
                           Word{"agent kept by sulfite", kept_by_sulfite},
                           Word{"agent hindered by sulfite", hindered_by_sulfite}};

/// Of boric acid and the like, whose every pK is above it, a fixing bath takes no harm. Common practice, no source.
constexpr double weak_from_pk = 7;

bool is_weak(const Chemical& chemical) {
    const auto above = [](const Equilibrium& it) { return it.constant.pk > weak_from_pk; };
    return !chemical.equilibria.empty() && std::ranges::all_of(chemical.equilibria, above);
}

}  // namespace

Purposes purposes_of(const Chemical& chemical) {
    Purposes found = 0;
    for (const auto& [word, purpose] : words)
        if (std::ranges::find(chemical.acts_as, word) != chemical.acts_as.end()) found |= purpose;
    if (has(found, acid) && is_weak(chemical)) found &= static_cast<Purposes>(~acid);
    return found;
}

}  // namespace scruple::check
