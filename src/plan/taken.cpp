// SPDX-License-Identifier: MIT
// What is taken of a substance, in moles.
#include <algorithm>

#include "scruple/check/contents.hpp"
#include "scruple/check/making.hpp"
#include "scruple/plan/react.hpp"
#include "words.hpp"

namespace scruple::plan {

using check::Addition;
using check::Id;
using check::Model;

namespace {

/// The one chemical with such a form; of several the one that is a gas, since only those are named for being one.
template <class Test>
Id only_chemical(const Model& model, const Test& test) {
    Id found = check::none;
    bool several = false;
    for (Id id = 0; id < model.chemicals.size(); ++id) {
        const auto form = std::ranges::find_if(model.chemicals[id].forms, test);
        if (form == model.chemicals[id].forms.end()) continue;
        if (check::is_gas(*form)) return id;
        several = several || found != check::none;
        found = id;
    }
    return several ? check::none : found;
}

}  // namespace

Substance substance_of(const Model& model, Id chemical, Id form) {
    const check::Chemical& it = model.chemicals[chemical];
    const check::Form& of = it.forms[form];
    return {check::shown_name(it, form), std::string(of.formula_text), of.formula, chemical, form};
}

Substance substance_of(const Model& model, std::string text, const chemistry::Formula& formula) {
    Substance substance{text, std::move(text), formula, check::none, check::none};
    const auto its = [&](const check::Form& form) { return form.formula == formula; };
    const auto but_for_water = [dry = chemistry::without_water(formula)](const check::Form& form) {
        return chemistry::without_water(form.formula) == dry;
    };
    const Id exact = only_chemical(model, its);
    substance.chemical = exact != check::none ? exact : only_chemical(model, but_for_water);
    if (exact != check::none) {
        const auto& forms = model.chemicals[exact].forms;
        substance.form = static_cast<Id>(std::ranges::find_if(forms, its) - forms.begin());
    }
    return substance;
}

Taken taken_of(const Model& model, const Addition& addition) {
    const check::Dose dose = check::dose(model, addition, 0);
    Taken taken{substance_of(model, addition.chemical, addition.form),
                substance_words(model, addition),
                dose.grams,
                dose.grams * check::purity(model, addition),
                {},
                "g"};
    if (addition.by == Addition::By::amount) {
        taken.amount = addition.shares.front();
        taken.unit = "mol";
    } else if (addition.by != Addition::By::mass) {
        taken.amount = dose.ml;
        taken.unit = "ml";
    } else {
        taken.amount = addition.shares.front();
    }
    taken.mol = taken.grams / chemistry::molar_mass(taken.what.formula);
    return taken;
}

Taken taken_of(const Substance& what, const check::Exact& amount, bool in_moles) {
    const check::Exact molar_mass = chemistry::molar_mass(what.formula);
    const check::Exact grams = in_moles ? amount * molar_mass : amount;
    return {what, what.name, amount, grams, grams / molar_mass, in_moles ? "mol" : "g"};
}

Figure figure_of(const Taken& taken, const check::Exact& amount) {
    if (taken.unit == "mol") return plain(amount, "mol");
    return taken.unit == "ml" ? plain_ml(amount) : plain_grams(amount);
}

}  // namespace scruple::plan
