// SPDX-License-Identifier: MIT
#include "making_details.hpp"

#include <fmt/format.h>

#include "scruple/check/contents.hpp"
#include "scruple/plan/figure.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Exact;
using check::Model;
using Shown = GrowingText::Shown;

constexpr int times_where_gas_is_given_off = 2;  // common practice, no source

/// The conversion's own volume: its water and the room of its reagents.
Exact solution_ml(const Model& model, const check::Making& making) {
    Exact ml = making.water_ml;
    for (const check::Share& share : making.reagents) {
        const Chemical& chemical = model.chemicals[share.chemical];
        const check::Id form = share.form < chemical.forms.size() ? share.form : 0;
        ml += share.grams * chemical.forms[form].room_per_gram;
    }
    return ml;
}

GrowingText gas_text(const Model& model, const check::Share& gas) {
    return {"gives off about ", fmt::format(" of {}", model.chemicals[gas.chemical].name), Shown::three_figures,
            check::litres_of_gas(model, gas), "l"};
}

}  // namespace

std::vector<GrowingText> making_details(const Model& model, const check::Making& making) {
    const Chemical& product = model.chemicals[making.product.chemical];
    std::vector<GrowingText> details;
    details.push_back(
        {"makes ", " " + check::shown_name(product, making.product.form), Shown::grams, making.product.grams});
    for (const check::Share& gas : making.gases) details.push_back(gas_text(model, gas));
    const auto& stated = making.conversion->vessel_times;
    if (making.gases.empty() && !stated) return details;
    const Exact times = stated ? *stated : Exact(times_where_gas_is_given_off);
    details.push_back({"an open vessel that holds at least ", "", Shown::whole_ml, solution_ml(model, making) * times});
    return details;
}

void assume_of_making(const Model& model, const check::Making& making, Assumptions& assumptions) {
    const Chemical& product = model.chemicals[making.product.chemical];
    assumptions.add(fmt::format("The conversion to {} is taken to be complete.", product.name));
    if (making.gases.empty()) return;
    assumptions.add("Gas is counted as an ideal gas at 25\u00A0°C and 1\u00A0atm, 24.47\u00A0l a mole.");
    if (!making.conversion->vessel_times)
        assumptions.add("A vessel in which gas is given off is taken at twice its contents.");
}

}  // namespace scruple::plan
