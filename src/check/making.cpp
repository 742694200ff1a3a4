// SPDX-License-Identifier: MIT
#include "scruple/check/making.hpp"

#include <algorithm>

#include "scruple/check/contents.hpp"

namespace scruple::check {

namespace {

const Form& form_of(const Model& model, Id chemical, Id form) {
    const std::vector<Form>& forms = model.chemicals[chemical].forms;
    return forms[form < forms.size() ? form : 0];
}

const Form& form_of(const Model& model, const Share& share) {
    return form_of(model, share.chemical, share.form);
}

bool is_gas(const Model& model, const Conversion::Side& side) {
    return check::is_gas(form_of(model, side.chemical, side.form));
}

bool is_water_side(const Model& model, const Conversion::Side& side) {
    return side.chemical == model.water;
}

/// Moles of the reaction as written.
Exact turns_of(const Model& model, const Conversion& conversion, const Share& product) {
    const auto made = std::ranges::find(conversion.right, product.chemical, &Conversion::Side::chemical);
    const Exact& molar_mass = form_of(model, product).molar_mass;
    if (made == conversion.right.end() || made->coefficient <= 0 || molar_mass <= 0) return {};
    return product.grams * purity(form_of(model, product)) / molar_mass / made->coefficient;
}

Share share_of(const Model& model, const Conversion::Side& side, const Exact& turns) {
    return {side.chemical, side.form, turns * side.coefficient * form_of(model, side.chemical, side.form).molar_mass};
}

void add_reagents(const Model& model, const Exact& turns, Making& making) {
    const Conversion& conversion = *making.conversion;
    for (const Conversion::Side& side : conversion.left) {
        Share share = share_of(model, side, turns);
        share.grams /= purity(form_of(model, share));
        if (side.chemical == conversion.excess_of) {
            const Exact excess = share.grams * conversion.excess_percent / 100;
            share.grams += excess;
            if (excess > 0) making.besides.push_back({side.chemical, side.form, excess});
        }
        if (!is_water_side(model, side)) making.reagents.push_back(share);
    }
}

void add_products(const Model& model, const Exact& turns, Making& making) {
    for (const Conversion::Side& side : making.conversion->right) {
        if (side.chemical == making.product.chemical || is_water_side(model, side)) continue;
        (is_gas(model, side) ? making.gases : making.besides).push_back(share_of(model, side, turns));
    }
}

const Share* share_in(const Making& making, Id chemical) {
    const auto found = std::ranges::find(making.reagents, chemical, &Share::chemical);
    if (found != making.reagents.end()) return &*found;
    return making.product.chemical == chemical ? &making.product : nullptr;
}

Exact grams_as(const Model& model, const Share& share, Id form) {
    return as_form(form_of(model, share), form_of(model, share.chemical, form), share.grams);
}

const Conversion::PerGram* per_of(const Conversion& conversion, std::uint32_t line) {
    const auto found = std::ranges::find(conversion.per, line, &Conversion::PerGram::line);
    return found == conversion.per.end() ? nullptr : &*found;
}

Exact water_of(const Model& model, const Making& making) {
    Exact sum;
    const std::vector<Line>& lines = model.sections[making.conversion->section].lines;
    for (std::uint32_t i = 0; i < lines.size(); ++i) {
        const auto* addition = std::get_if<Addition>(&lines[i]);
        if (addition != nullptr && addition->chemical == model.water) sum += measure_in(model, making, *addition, i);
    }
    return sum;
}

bool takes(const Conversion& conversion, Id reagent) {
    return reagent == none ||
           std::ranges::find(conversion.left, reagent, &Conversion::Side::chemical) != conversion.left.end();
}

}  // namespace

const Conversion* conversion_for(const Model& model, const Addition& addition) {
    if (addition.made_by != none) return &model.conversions[addition.made_by];
    const auto rank = [&](const Conversion& it) { return std::pair(it.built_in, it.product_form != addition.form); };
    const Conversion* first = nullptr;
    for (const Conversion& conversion : model.conversions) {
        if (conversion.product != addition.chemical || addition.chemical == none) continue;
        if (!is_worked(model, conversion) || !takes(conversion, addition.made_from)) continue;
        if (first == nullptr || rank(conversion) < rank(*first)) first = &conversion;
    }
    return first;
}

Making making_of(const Model& model, const Conversion& conversion, const Share& product) {
    Making making{&conversion, product, {}, {}, {}, {}};
    const Exact turns = turns_of(model, conversion, product);
    add_reagents(model, turns, making);
    add_products(model, turns, making);
    making.water_ml = water_of(model, making);
    return making;
}

Exact measure_in(const Model& model, const Making& making, const Addition& addition, std::uint32_t line) {
    Exact stated = addition.shares.empty() ? Exact() : addition.shares.front();
    if (const auto* per = per_of(*making.conversion, line)) {
        const Share* share = share_in(making, per->chemical);
        return share == nullptr ? stated : stated * grams_as(model, *share, per->form) / per->per_grams;
    }
    const Share* share = addition.shares.empty() ? share_in(making, addition.chemical) : nullptr;
    if (share == nullptr) return stated;
    const Exact grams_a_unit = dose_of(model, addition, 1).grams;
    return grams_a_unit.is_zero() ? Exact() : grams_as(model, *share, addition.form) / grams_a_unit;
}

bool is_gas(const Form& form) {
    return form.name == "gas";
}

const Exact& litres_a_mole_of_gas() {
    static const Exact litres = Exact(82057, 1000000) * Exact(29815, 100);
    return litres;
}

Exact litres_of_gas(const Model& model, const Share& gas) {
    return gas.grams / form_of(model, gas).molar_mass * litres_a_mole_of_gas();
}

}  // namespace scruple::check
