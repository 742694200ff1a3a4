// SPDX-License-Identifier: MIT
// Parse, and parse with the full check, beside general readers of the same data, in one run. The figures
// that count are ratios within a run: machines are noisy.
#include <benchmark/benchmark.h>
#include <toml++/toml.h>
#include <yaml-cpp/yaml.h>

#include "scruple/check/check.hpp"
#include "scruple/syntax/parse.hpp"
#include "workspace.hpp"

namespace {

using namespace scruple;

std::vector<syntax::Tree> parse_all(const std::vector<text::Source>& sources) {
    std::vector<syntax::Tree> trees;
    trees.reserve(sources.size());
    for (const auto& source : sources) trees.push_back(syntax::parse(source));
    return trees;
}

/// A workspace with the library in front, and the library's trees read once, as a program does at its start.
struct Loaded {
    explicit Loaded(std::size_t count)
        : workspace(bench::generate(count)), sources(bench::library()), built_in(sources.size()) {
        library_trees = parse_all(sources);
        sources.insert(sources.end(), workspace.recipes.begin(), workspace.recipes.end());
    }
    bench::Workspace workspace;
    std::vector<text::Source> sources;
    std::vector<syntax::Tree> library_trees;
    std::size_t built_in;
};

void count_up(benchmark::State& state, const bench::Workspace& workspace) {
    state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * workspace.bytes));
    state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * workspace.recipes.size()));
}

void parse(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(parse_all(workspace.recipes));
    count_up(state, workspace);
}

void parse_and_check(benchmark::State& state) {
    const Loaded loaded(static_cast<std::size_t>(state.range(0)));
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) {
        auto trees = loaded.library_trees;
        for (auto i = loaded.built_in; i < loaded.sources.size(); ++i)
            trees.push_back(syntax::parse(loaded.sources[i]));
        const auto checked = check::check({loaded.sources, trees, loaded.built_in}, workers);
        if (diagnostics::any_error(checked.diagnostics)) state.SkipWithError("the generated recipes have faults");
    }
    count_up(state, loaded.workspace);
}

void read_toml(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(toml::parse(workspace.toml));
    count_up(state, workspace);
}

void read_yaml(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(YAML::Load(workspace.yaml));
    count_up(state, workspace);
}

}  // namespace

BENCHMARK(parse)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(parse_and_check)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(read_toml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(read_yaml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
