// SPDX-License-Identifier: MIT
#include "leftovers.hpp"

#include <algorithm>

#include "scruple/check/making.hpp"

namespace scruple::check {

std::vector<Content> leftovers_of(const Model& model, const Addition& product, const Exact& grams) {
    std::vector<Content> left;
    const auto* conversion = conversion_for(model, product);
    if (conversion == nullptr) return left;
    const auto making = making_of(model, *conversion, {product.chemical, product.form, grams});
    for (const auto& share : making.besides) {
        const auto reagent = std::ranges::find(making.reagents, share.chemical, &Share::chemical);
        const bool is_excess = reagent != making.reagents.end() && !share.grams.is_zero();
        const auto& forms = model.chemicals[share.chemical].forms;
        const Id form = share.form < forms.size() ? share.form : 0;
        const double g = share.grams.to_double();
        left.push_back({share.chemical, form, g, g / forms[form].molar_mass.to_double(),
                        is_excess ? (reagent->grams / share.grams).to_double() : 1});
    }
    return left;
}

}  // namespace scruple::check
