// SPDX-License-Identifier: MIT
// One solution of acids and bases brought to rest: a developer of five chemicals, by the library's constants.
#include <benchmark/benchmark.h>

#include <stdexcept>

#include "scruple/check/check.hpp"
#include "scruple/check/ph.hpp"
#include "scruple/syntax/parse.hpp"
#include "workspace.hpp"

namespace {

using namespace scruple;

check::Content content(const check::Model& model, const char* name, double mol_per_l) {
    const auto found = model.chemical_names.find(name);
    if (found == model.chemical_names.end()) throw std::runtime_error(name);
    const auto id = found->second.first;
    return {id, 0, mol_per_l * model.chemicals[id].forms.front().molar_mass.to_double(), mol_per_l};
}

void solve_ph(benchmark::State& state, bool with_range) {
    const auto sources = bench::library();
    std::vector<syntax::SharedTree> trees;
    for (const auto& source : sources) trees.push_back(syntax::parse(source));
    const auto checked = check::check({sources, trees, sources.size()}, 1);
    const auto& model = checked.model;
    const std::vector<check::Content> contents{
        content(model, "metol", 0.01), content(model, "hydroquinone", 0.05), content(model, "sodium sulfite", 0.4),
        content(model, "sodium carbonate", 0.3), content(model, "potassium bromide", 0.02)};
    for (auto _ : state) {
        if (with_range)
            benchmark::DoNotOptimize(check::ph_of(model, contents, 20));
        else
            benchmark::DoNotOptimize(check::ph_value_of(model, contents, 20));
    }
}

}  // namespace

BENCHMARK_CAPTURE(solve_ph, one_value, false)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(solve_ph, with_its_range, true)->Unit(benchmark::kMicrosecond);
