// SPDX-License-Identifier: MIT
#include "give_or_take.hpp"

#include <algorithm>
#include <cmath>

namespace scruple::check {
namespace {

constexpr double without_bench = 0.01;  // common practice, no source
constexpr double of_the_jar = 0.005;    // what salts of good grade hold: 99 to 100 %. Common practice, no source

double of_readings(const Instrument& instrument, const Exact& measure, double readings) {
    return (instrument.division / measure).to_double() / 2 * std::sqrt(readings);
}

/// In one reading, or in a few fills of a finer vessel: each is off by half a division, this way or that.
double of_measuring(const Bench& bench, bool by_weight, const Exact& measure) {
    double least = 1;
    for (const auto& one : bench.instruments) {
        if ((one.what == Instrument::What::balance) != by_weight) continue;
        const Exact readings = (measure / one.capacity).ceil();
        if (readings <= (by_weight ? 1 : most_fills))
            least = std::min(least, of_readings(one, measure, readings.to_double()));
    }
    return least < 1 ? least : without_bench;
}

}  // namespace

double give_or_take_of_measuring(const Model& model, bool by_weight, const Exact& measure) {
    if (measure <= 0 || model.benches.size() != 1) return without_bench;
    return of_measuring(model.benches.front(), by_weight, measure);
}

double give_or_take(const Model& model, const Addition& addition, const Exact& measure) {
    const bool by_instrument = addition.by == Addition::By::mass || addition.by == Addition::By::volume;
    const bool by_weight = addition.by == Addition::By::mass;
    const double measuring = by_instrument ? give_or_take_of_measuring(model, by_weight, measure) : without_bench;
    if (addition.solution != none) return measuring;
    const auto& forms = model.chemicals[addition.chemical].forms;
    const double of_mole = addition.form < forms.size() ? forms[addition.form].molar_mass_off : 0;
    return std::hypot(measuring, of_the_jar, of_mole);
}

double give_or_take_of_sum(double one, double one_off, double other, double other_off) {
    const double sum = one + other;
    return sum > 0 ? std::hypot(one * one_off, other * other_off) / sum : 0;
}

}  // namespace scruple::check
