// SPDX-License-Identifier: MIT
#include "making_words.hpp"

#include <fmt/format.h>

#include "scruple/check/contents.hpp"
#include "scruple/plan/figure.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Exact;
using check::Model;

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

std::string gas_words(const Model& model, const check::Share& gas, const Exact& scale) {
    return fmt::format("gives off about {} of {}", plain(check::litres_of_gas(model, gas) * scale, "l", 3).with_unit(),
                       model.chemicals[gas.chemical].name);
}

}  // namespace

std::vector<std::string> making_words(const Model& model, const check::Making& making, const Exact& scale,
                                      Assumptions& assumptions) {
    const Chemical& product = model.chemicals[making.product.chemical];
    std::vector<std::string> words;
    words.push_back(fmt::format("makes {} {}", plain_grams(making.product.grams * scale).with_unit(),
                                check::shown_name(product, making.product.form)));
    for (const check::Share& gas : making.gases) words.push_back(gas_words(model, gas, scale));
    assumptions.add(fmt::format("The conversion to {} is taken to be complete.", product.name));
    if (!making.gases.empty())
        assumptions.add("Gas is counted as an ideal gas at 25\u00A0°C and 1\u00A0atm, 24.47\u00A0l a mole.");
    const auto& stated = making.conversion->vessel_times;
    if (making.gases.empty() && !stated) return words;
    const Exact times = stated ? *stated : Exact(times_where_gas_is_given_off);
    words.push_back("an open vessel that holds at least " +
                    plain_ml((solution_ml(model, making) * scale * times).ceil()).with_unit());
    if (!stated) assumptions.add("A vessel in which gas is given off is taken at twice its contents.");
    return words;
}

}  // namespace scruple::plan
