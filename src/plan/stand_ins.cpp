// SPDX-License-Identifier: MIT
// What does a like thing and is another chemical: named, never taken.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

#include "scruple/plan/figure.hpp"
#include "ways.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Id;
using check::Ion;
using check::Model;

constexpr std::size_t most_named = 4;

/// A salt of sodium or potassium: its anion, and how many of it.
struct Salt {
    std::string_view anion;
    int anions = 0;
};

bool is_counted_out(std::string_view cation) {
    return cation == "Na+" || cation == "K+";
}

std::optional<Salt> salt_of(const Chemical& chemical) {
    if (chemical.ions.size() != 2) return std::nullopt;
    const Ion &cation = chemical.ions[0], &anion = chemical.ions[1];
    if (!is_counted_out(cation.text)) return std::nullopt;
    return Salt{anion.text, anion.coefficient};
}

bool holds(const Chemical& chemical, std::string_view ion) {
    return std::ranges::any_of(chemical.ions, [ion](const Ion& one) { return one.text == ion; });
}

/// Alkalis stand in for one another inside a family only, and after a test: common practice, no source. Phosphates,
/// bicarbonates and amines are in none of them.
struct Family {
    std::string_view anion, name;
};
constexpr std::array families{Family{"BO2-", "mild"}, Family{"B4O7-2", "mild"}, Family{"CO3-2", "carbonate"},
                              Family{"OH-", "caustic"}};

/// Empty where it is in none.
std::string_view family_of(const Chemical& chemical) {
    for (const Family& family : families)
        if (holds(chemical, family.anion)) return family.name;
    return {};
}

class Namer {
  public:
    Namer(const Model& model, const Shelf& shelf, const Amount& wanted)
        : model_(model), shelf_(shelf), wanted_(wanted), asked_(model.chemicals[wanted.ware.chemical]) {}

    std::vector<std::string> names() {
        for (Id id = 0; id < model_.chemicals.size() && names_.size() < most_named; ++id)
            if (id != wanted_.ware.chemical) name(id);
        return std::move(names_);
    }

  private:
    void name(Id id) {
        const Chemical& other = model_.chemicals[id];
        const auto form = form_there(id);
        if (!form) return;
        const Ware ware{id, *form, std::nullopt, false};
        const auto mine = salt_of(asked_), its = salt_of(other);
        const std::string_view family = family_of(asked_);
        if (mine && its && mine->anion == its->anion)
            names_.push_back(fmt::format("{} {}, as many moles of {}: like function, test it first",
                                         ware_words(model_, ware), amount_words(ware, *mine, *its), mine->anion));
        else if (!family.empty() && family == family_of(other))
            names_.push_back(fmt::format("{}, {} alkali as well: like function, test it first; no figure follows",
                                         ware_words(model_, ware), family));
    }

    /// The first form on hand, or the first of all where nothing is known of the shelf.
    [[nodiscard]] std::optional<Id> form_there(Id id) const {
        if (shelf_.stock == nullptr) return Id(0);
        for (const auto& [ware, measure] : shelf_.stock->wares)
            if (ware.chemical == id && measure > 0 && !ware.strength) return ware.form;
        return std::nullopt;
    }

    [[nodiscard]] std::string amount_words(const Ware& ware, const Salt& mine, const Salt& its) const {
        const auto wanted = moles_held(model_, wanted_.ware), held = moles_held(model_, ware);
        if (!wanted || !held) return {};
        return plain_grams(wanted_.measure * *wanted * mine.anions / its.anions / *held).with_unit();
    }

    const Model& model_;
    const Shelf& shelf_;
    const Amount& wanted_;
    const Chemical& asked_;
    std::vector<std::string> names_;
};

}  // namespace

std::vector<std::string> stand_ins(const Model& model, const Shelf& shelf, const Amount& wanted) {
    return Namer(model, shelf, wanted).names();
}

}  // namespace scruple::plan
