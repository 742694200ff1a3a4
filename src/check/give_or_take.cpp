// SPDX-License-Identifier: MIT
#include "give_or_take.hpp"

#include <algorithm>
#include <cmath>

namespace scruple::check {
namespace {

using What = Instrument::What;

constexpr double without_bench = 0.01;  // common practice, no source
constexpr double of_the_jar = 0.005;    // what salts of good grade hold: 99 to 100 %. Common practice, no source

/// The finest that takes it.
const Instrument* instrument_for(const Bench& bench, bool by_weight, const Exact& measure) {
    const Instrument* best = nullptr;
    for (const auto& one : bench.instruments) {
        if ((one.what == What::balance) != by_weight || one.capacity < measure) continue;
        if (best == nullptr || one.division < best->division) best = &one;
    }
    return best;
}

double of_measuring(const Model& model, const Addition& addition, const Exact& measure) {
    const bool by_weight = addition.by == Addition::By::mass;
    if (model.benches.size() != 1 || (!by_weight && addition.by != Addition::By::volume)) return without_bench;
    const auto* instrument = instrument_for(model.benches.front(), by_weight, measure);
    return instrument == nullptr ? without_bench : (instrument->division / measure).to_double() / 2;
}

}  // namespace

double give_or_take(const Model& model, const Addition& addition, const Exact& measure) {
    if (measure <= 0) return without_bench;
    return std::hypot(of_measuring(model, addition, measure), of_the_jar);
}

double give_or_take_of_sum(double one, double one_off, double other, double other_off) {
    const double sum = one + other;
    return sum > 0 ? std::hypot(one * one_off, other * other_off) / sum : 0;
}

}  // namespace scruple::check
