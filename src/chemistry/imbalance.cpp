// SPDX-License-Identifier: MIT
#include <algorithm>
#include <limits>

#include "elements.hpp"

namespace scruple::chemistry {

using quantity::Exact;

namespace {

void add(Tally& tally, const std::vector<Term>& terms, int sign) {
    for (const Term& term : terms)
        for (const auto& [element, atoms] : term.formula.atoms)
            tally[element] += Exact(sign) * Exact(term.coefficient) * atoms;
}

std::int64_t charge_of(const std::vector<Term>& terms) {
    std::int64_t sum = 0;
    for (const Term& term : terms) sum += std::int64_t{term.coefficient} * term.formula.charge;
    return sum;
}

std::int32_t clamped(std::int64_t value) {
    using Limits = std::numeric_limits<std::int32_t>;
    return static_cast<std::int32_t>(std::clamp<std::int64_t>(value, Limits::min(), Limits::max()));
}

}  // namespace

Imbalance imbalance(const std::vector<Term>& left, const std::vector<Term>& right) {
    Tally surplus;
    add(surplus, right, 1);
    add(surplus, left, -1);
    Imbalance result;
    for (Element element = 0; element < element_count; ++element)
        if (!surplus[element].is_zero()) result.elements.push_back({element, surplus[element]});
    result.charge = clamped(charge_of(right) - charge_of(left));
    return result;
}

}  // namespace scruple::chemistry
