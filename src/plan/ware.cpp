// SPDX-License-Identifier: MIT
#include "ware.hpp"

#include <tuple>

#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

using check::Addition;
using check::Exact;
using check::Model;

namespace {

Addition addition_of(const Ware& ware) {
    Addition addition;
    addition.by = ware.by_volume ? Addition::By::volume : Addition::By::mass;
    addition.chemical = ware.chemical;
    addition.form = ware.form;
    addition.strength = ware.strength;
    return addition;
}

auto rank(const Ware& ware) {
    const auto strength = ware.strength.value_or(check::Strength{});
    return std::tuple(ware.chemical, ware.form, ware.by_volume, strength.unit, strength.value);
}

bool density_known(const Model& model, const Ware& ware) {
    const auto& chemical = model.chemicals[ware.chemical];
    switch (check::density_need(chemical, ware.strength, ware.by_volume)) {
        case check::DensityNeed::nothing:
            return true;
        case check::DensityNeed::of_form:
            return ware.chemical == model.water || check::density_of(chemical, ware.form, std::nullopt);
        case check::DensityNeed::of_solution:
            return check::density_of(chemical, ware.form, ware.strength).has_value();
    }
    return false;
}

bool strong_enough(const Ware& asked, const Ware& from) {
    if (!from.strength) return true;
    return asked.strength && asked.strength->unit == from.strength->unit &&
           from.strength->value >= asked.strength->value;
}

}  // namespace

std::strong_ordering operator<=>(const Ware& a, const Ware& b) {
    return rank(a) <=> rank(b);
}

Amount counted(const Model& model, Ware ware, const Exact& measure) {
    if (ware.form == check::none) ware.form = 0;
    if (ware.by_volume) return {ware, measure};
    const auto density = check::density_of(model.chemicals[ware.chemical], ware.form, ware.strength);
    if (!density || density->is_zero()) return {ware, measure};
    ware.by_volume = true;
    return {ware, measure / *density};
}

Amount counted(const Model& model, const Addition& addition, const Exact& measure) {
    Ware ware{addition.chemical, addition.form, addition.strength, addition.by == Addition::By::volume};
    if (addition.saturated_at || addition.by == Addition::By::amount) {
        ware.strength.reset();
        ware.by_volume = false;
        return counted(model, ware, check::dose_of(model, addition, measure).grams);
    }
    if (addition.by != Addition::By::drops) return counted(model, ware, measure);
    ware.by_volume = true;
    return counted(model, ware, check::dose_of(model, addition, measure).ml);
}

std::optional<Amount> counted(const Model& model, check::Id chemical, check::Id form,
                              const std::optional<check::Strength>& strength, const std::optional<Exact>& grams,
                              const std::optional<Exact>& ml) {
    if (chemical == check::none || (!grams && !ml)) return std::nullopt;
    return counted(model, Ware{chemical, form, strength, ml.has_value()}, ml ? *ml : *grams);
}

std::optional<Exact> grams_held(const Model& model, const Ware& ware) {
    if (!density_known(model, ware)) return std::nullopt;
    const Exact grams = check::dose_of(model, addition_of(ware), 1).grams;
    if (grams.is_zero()) return std::nullopt;
    return grams;
}

Amount as_pure(const Model& model, const Amount& amount) {
    const auto held = grams_held(model, amount.ware);
    if (!amount.ware.strength || !held) return amount;
    return counted(model, Ware{amount.ware.chemical, amount.ware.form, std::nullopt, false}, amount.measure * *held);
}

std::optional<Exact> moles_held(const Model& model, const Ware& ware) {
    const auto grams = grams_held(model, ware);
    const auto& form = model.chemicals[ware.chemical].forms[ware.form];
    if (!grams || form.molar_mass <= 0) return std::nullopt;
    return *grams * (ware.strength ? Exact(1) : check::purity(form)) / form.molar_mass;
}

std::optional<Exact> moles_for_moles(const Model& model, const Ware& asked, const Ware& from) {
    if (asked == from) return Exact(1);
    if (asked.chemical != from.chemical) return std::nullopt;
    const auto wanted = moles_held(model, asked);
    const auto held = moles_held(model, from);
    if (!wanted || !held || held->is_zero()) return std::nullopt;
    return *wanted / *held;
}

std::optional<Exact> in_place_of(const Model& model, const Ware& asked, const Ware& from) {
    if (asked.chemical != from.chemical || !strong_enough(asked, from)) return std::nullopt;
    return moles_for_moles(model, asked, from);
}

std::string form_words(const Model& model, const Ware& ware) {
    return form_words(model, addition_of(ware));
}

std::string ware_words(const Model& model, const Ware& ware) {
    return substance_words(model, addition_of(ware));
}

}  // namespace scruple::plan
