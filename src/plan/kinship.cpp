// SPDX-License-Identifier: MIT
#include "kinship.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "like_function.hpp"
#include "scruple/chemistry/core.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Exact;
using check::Id;
using check::Model;
using chemistry::Core;
using chemistry::Cores;
using chemistry::Formula;

/// Of a mole of the chemical.
std::vector<Cores> cores_in(const Chemical& chemical) {
    std::vector<Cores> all;
    const auto add = [&all](const Formula& species, const Exact& times) {
        auto cores = chemistry::cores_of(species);
        if (!cores) return;
        cores->count *= times;
        const auto known = std::ranges::find(all, cores->core, &Cores::core);
        if (known == all.end())
            all.push_back(*std::move(cores));
        else
            known->count += cores->count;
    };
    for (const check::Ion& ion : chemical.ions) add(ion.formula, ion.coefficient);
    if (chemical.ions.empty() && !chemical.forms.empty()) add(chemical.forms.front().formula, 1);
    return all;
}

Exact count_in(const std::vector<Cores>& all, const Core& core) {
    const auto found = std::ranges::find(all, core, &Cores::core);
    return found == all.end() ? Exact(0) : found->count;
}

std::string text_of(const Core& core) {
    std::string text;
    for (const auto& [element, atoms] : core.atoms) {
        text += chemistry::symbol(element);
        if (atoms != Exact(1)) text += quantity::exact_text(atoms);
    }
    return text;
}

/// Ions that only go with the others; N alone is ammonium.
bool goes_along(const Core& core) {
    constexpr std::array companions{"Na", "K", "Li", "N"};
    return std::ranges::find(companions, text_of(core)) != companions.end();
}

/// What the one there is holds more of than is called for.
std::vector<Cores> difference(const std::vector<Cores>& called, const std::vector<Cores>& there, const Exact& moles) {
    std::vector<Cores> all;
    for (const Cores& cores : there) {
        const Exact more = cores.count * moles - count_in(called, cores.core);
        if (!more.is_zero()) all.push_back({cores.core, more});
    }
    for (const Cores& cores : called)
        if (count_in(there, cores.core).is_zero()) all.push_back({cores.core, -cores.count});
    return all;
}

const Cores* shared_core(const std::vector<Cores>& called, const std::vector<Cores>& there) {
    for (const Cores& cores : called)
        if (!goes_along(cores.core) && !count_in(there, cores.core).is_zero()) return &cores;
    return nullptr;
}

void note_alkali(const std::vector<Cores>& more, Kin& kin) {
    if (more.size() != 1) return;
    const std::string text = text_of(more.front().core);
    if (text != "Na" && text != "K") return;
    kin.alkali = more.front().count;
    kin.alkali_of = text;
}

bool are_isomers(const Chemical& a, const Chemical& b) {
    const Formula one = chemistry::without_water(a.forms.front().formula);
    return chemistry::is_organic(one) && one == chemistry::without_water(b.forms.front().formula);
}

Kin by_cores(const Chemical& called, const Chemical& there) {
    const std::vector<Cores> mine = cores_in(called), its = cores_in(there);
    const Cores* shared = shared_core(mine, its);
    if (shared == nullptr) return {Kinship::like_function, 1, "mole for mole", {}, {}};
    Kin kin{Kinship::like_function,
            shared->count / count_in(its, shared->core),
            fmt::format("as much {} in both", text_of(shared->core)),
            {},
            {}};
    if (are_isomers(called, there)) return kin;
    const std::vector<Cores> more = difference(mine, its, kin.moles);
    if (more.empty()) kin.how = Kinship::same_solution;
    note_alkali(more, kin);
    return kin;
}

std::string unlike(const Chemical& a, const Chemical& b) {
    const std::string_view one = alkali_family(a), other = alkali_family(b);
    if (one != other && !one.empty() && !other.empty())
        return fmt::format("{} is a {} alkali and {} a {} one: no weight of the one does what the other does.", a.name,
                           one, b.name, other);
    return fmt::format("{} and {} have no use in common: no `acts as` word stands in both.", a.name, b.name);
}

}  // namespace

std::variant<Kin, Refusal> kin_of(const Model& model, Id called, Id there) {
    if (called == there) return Kin{};
    const Chemical &a = model.chemicals[called], &b = model.chemicals[there];
    Kin kin = by_cores(a, b);
    if (kin.how == Kinship::same_solution) return kin;
    const auto likeness = likeness_of(a, b);
    if (!likeness) return Refusal{unlike(a, b)};
    const std::string_view use = shared_use(a, b);
    kin.because = use.empty() ? fmt::format("{}; both are salts of {}", kin.because, likeness->word)
                              : fmt::format("{}; both are known as {}", kin.because, use);
    return kin;
}

}  // namespace scruple::plan
