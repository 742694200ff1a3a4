// SPDX-License-Identifier: MIT
// Parse, and parse with the full check, beside general readers of the same data, in one run. The figures
// that count are ratios within a run: machines are noisy.
#include <benchmark/benchmark.h>
#include <toml++/toml.h>
#include <yaml-cpp/yaml.h>

#include "scruple/check/check.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/side_by_side.hpp"
#include "workspace.hpp"

namespace {

using namespace scruple;

constexpr std::size_t files_at_a_time = 8;

/// Files beside one another, as the driver reads them.
std::vector<syntax::Tree> parse_all(std::span<const text::Source> sources, unsigned workers) {
    std::vector<syntax::Tree> trees(sources.size());
    text::side_by_side(sources.size(), workers, files_at_a_time,
                       [&](std::size_t i, unsigned) { trees[i] = syntax::parse(sources[i]); });
    return trees;
}

/// A workspace with the library in front, and the library's trees read once, as a program does at its start.
struct Loaded {
    explicit Loaded(std::size_t count)
        : workspace(bench::generate(count)), sources(bench::library()), built_in(sources.size()) {
        library_trees = parse_all(sources, 1);
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
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) benchmark::DoNotOptimize(parse_all(workspace.recipes, workers));
    count_up(state, workspace);
}

void parse_and_check(benchmark::State& state) {
    const Loaded loaded(static_cast<std::size_t>(state.range(0)));
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) {
        auto trees = loaded.library_trees;
        std::ranges::move(parse_all(std::span(loaded.sources).subspan(loaded.built_in), workers),
                          std::back_inserter(trees));
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

BENCHMARK(parse)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(parse_and_check)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(read_toml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(read_yaml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
