// SPDX-License-Identifier: MIT
// Doses: what a measured amount of a chemical is in grams, ml and moles.
#include <algorithm>

#include "mix.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/check/solubility.hpp"

namespace scruple::check {
namespace {

using quantity::Unit;
using By = Addition::By;

/// Grams of the substance in one ml of the solution; the density is of the form, of the solution, or 1.
Exact grams_per_ml(const Model& model, const Chemical& chemical, const Addition& addition, const Form& form) {
    if (addition.saturated_at) return saturated_grams_per_ml(model, addition, *addition.saturated_at).value_or(0);
    const auto& strength = *addition.strength;
    switch (strength.unit) {
        case Unit::percent_w_v:
            return strength.value / 100;
        case Unit::gram_per_litre:
            return strength.value / 1000;
        case Unit::milligram_per_litre:
        case Unit::ppm:
            return strength.value / 1'000'000;
        case Unit::mole_per_litre:
            return strength.value / 1000 * form.molar_mass;
        case Unit::millimole_per_litre:
            return strength.value / 1'000'000 * form.molar_mass;
        case Unit::percent_w_w:
            return strength.value / 100 * density_of(chemical, addition.form, addition.strength).value_or(1);
        case Unit::percent_v_v:
            return strength.value / 100 * density_of(chemical, addition.form, std::nullopt).value_or(1);
        default:
            return 0;
    }
}

/// Grams of the substance in one gram of the solution.
Exact grams_per_gram(const Model& model, const Chemical& chemical, const Addition& addition, const Form& form) {
    if (addition.strength && addition.strength->unit == Unit::percent_w_w) return addition.strength->value / 100;
    return grams_per_ml(model, chemical, addition, form) /
           density_of(chemical, addition.form, addition.strength).value_or(1);
}

Exact drops_to_ml(const Model& model, const Exact& drops) {
    if (model.dropper != none && model.benches[model.dropper].drops_per_ml)
        return drops / *model.benches[model.dropper].drops_per_ml;
    const auto has_dropper = [](const Bench& bench) { return bench.drops_per_ml.has_value(); };
    const auto bench = std::ranges::find_if(model.benches, has_dropper);
    return bench == model.benches.end() ? Exact(0) : drops / *bench->drops_per_ml;
}

Dose of_pure(const Model& model, const Chemical& chemical, const Addition& addition, const Form& form,
             const Exact& measure) {
    const auto density =
        addition.chemical == model.water ? std::optional<Exact>(1) : density_of(chemical, addition.form, std::nullopt);
    Dose dose;
    switch (addition.by) {
        case By::mass:
            dose.grams = measure;
            break;
        case By::amount:
            dose.grams = measure * form.molar_mass / purity(form);
            break;
        case By::volume:
            dose.grams = measure * density.value_or(1);
            break;
        case By::drops:
            dose.grams = drops_to_ml(model, measure) * density.value_or(1);
            break;
    }
    if (density) {
        dose.ml = dose.grams / *density;
        dose.room_ml = dose.ml;
    } else {
        dose.room_ml = dose.grams * (chemical.forms.empty() ? room_of_gram(chemical, form) : form.room_per_gram);
        dose.room_estimated = true;
    }
    dose.mol = dose.grams.to_double() * form.mol_per_gram;
    return dose;
}

Dose of_dissolved(const Model& model, const Chemical& chemical, const Addition& addition, const Form& form,
                  const Exact& measure) {
    Dose dose;
    switch (addition.by) {
        case By::mass: {
            const auto per_gram = grams_per_gram(model, chemical, addition, form);
            dose.grams = measure * per_gram;
            dose.ml = measure / density_of(chemical, addition.form, addition.strength).value_or(1);
            break;
        }
        case By::amount: {
            const auto per_ml = grams_per_ml(model, chemical, addition, form);
            dose.grams = measure * form.molar_mass;
            dose.ml = per_ml.is_zero() ? Exact(0) : dose.grams / per_ml;
            break;
        }
        case By::volume:
        case By::drops:
            dose.ml = addition.by == By::drops ? drops_to_ml(model, measure) : measure;
            dose.grams = dose.ml * grams_per_ml(model, chemical, addition, form);
            break;
    }
    dose.room_ml = dose.ml;
    if (!form.molar_mass.is_zero()) dose.mol = dose.grams.to_double() / form.molar_mass.to_double();
    return dose;
}

}  // namespace

Exact purity(const Form& form) {
    return form.sold_as ? form.sold_as->value / 100 : Exact(1);
}

Exact purity(const Model& model, const Addition& addition) {
    const bool dissolved = addition.strength || addition.saturated_at;
    const auto& forms = model.chemicals[addition.chemical].forms;
    return dissolved || addition.form >= forms.size() ? Exact(1) : purity(forms[addition.form]);
}

Exact parts_in_a_hundred(const Model& model, const Addition& addition) {
    const auto& [value, unit] = *addition.strength;
    if (unit == Unit::percent_w_w || unit == Unit::percent_v_v) return value;
    const auto& chemical = model.chemicals[addition.chemical];
    return 100 * grams_per_ml(model, chemical, addition, form_of(chemical, addition.form));
}

Dose dose_of(const Model& model, const Addition& addition, const Exact& measure) {
    if (addition.solution != none) return {.grams = {}, .ml = measure, .room_ml = measure};
    const auto& chemical = model.chemicals[addition.chemical];
    const auto& form = form_of(chemical, addition.form);
    const bool dissolved = addition.strength || addition.saturated_at;
    return dissolved ? of_dissolved(model, chemical, addition, form, measure)
                     : of_pure(model, chemical, addition, form, measure);
}

Dose dose(const Model& model, const Addition& addition, std::size_t variant) {
    if (addition.how == Addition::How::the_rest || addition.shares.empty()) return {};
    return dose_of(model, addition, addition.shares[addition.shares.size() == 1 ? 0 : variant]);
}

Exact measure_now(const Addition& addition, std::size_t variant) {
    if (addition.shares.empty()) return 0;
    const Exact& whole = addition.shares[addition.shares.size() == 1 ? 0 : variant];
    if (addition.how == Addition::How::part_now) return addition.now.value_or(0);
    if (addition.how == Addition::How::the_rest) return whole - addition.now.value_or(0);
    return whole;
}

}  // namespace scruple::check
