// SPDX-License-Identifier: MIT
#include "like_function.hpp"

#include <algorithm>
#include <array>

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Ion;

bool is_counted_out(std::string_view cation) {
    return cation == "Na+" || cation == "K+";
}

bool holds(const Chemical& chemical, std::string_view ion) {
    return std::ranges::any_of(chemical.ions, [ion](const Ion& one) { return one.text == ion; });
}

/// Phosphates, bicarbonates and amines are in none of them.
struct Family {
    std::string_view anion, name;
};
constexpr std::array families{Family{"BO2-", "mild"}, Family{"B4O7-2", "mild"}, Family{"CO3-2", "carbonate"},
                              Family{"OH-", "caustic"}};

}  // namespace

std::optional<Salt> salt_of(const Chemical& chemical) {
    if (chemical.ions.size() != 2) return std::nullopt;
    const Ion &cation = chemical.ions[0], &anion = chemical.ions[1];
    if (!is_counted_out(cation.text)) return std::nullopt;
    return Salt{anion.text, anion.coefficient};
}

std::string_view alkali_family(const Chemical& chemical) {
    for (const Family& family : families)
        if (holds(chemical, family.anion)) return family.name;
    return {};
}

std::string_view shared_use(const Chemical& a, const Chemical& b) {
    for (const std::string_view use : a.acts_as)
        if (std::ranges::find(b.acts_as, use) != b.acts_as.end()) return use;
    return {};
}

std::optional<Likeness> likeness_of(const Chemical& a, const Chemical& b) {
    const auto one = salt_of(a), other = salt_of(b);
    if (one && other && one->anion == other->anion) return Likeness{Likeness::By::anion, one->anion};
    const std::string_view family = alkali_family(a), its = alkali_family(b);
    if (!family.empty() && family == its) return Likeness{Likeness::By::family, family};
    if (!family.empty() && !its.empty()) return std::nullopt;
    const std::string_view use = shared_use(a, b);
    return use.empty() ? std::nullopt : std::optional(Likeness{Likeness::By::use, use});
}

}  // namespace scruple::plan
