// SPDX-License-Identifier: MIT
// The bare grammar, parsing, and parsing with the full check, beside general readers of the same data, in one run. The
// figures that count are ratios within a run: machines are noisy.
#include <benchmark/benchmark.h>
#include <toml++/toml.h>
#include <yaml-cpp/yaml.h>

#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>
#include <sstream>

#include "scruple/check/check.hpp"
#include "scruple/check/packed.hpp"
#include "scruple/syntax/outline.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/side_by_side.hpp"
#include "syntax_alone.hpp"
#include "workspace.hpp"

namespace {

using namespace scruple;

constexpr std::size_t files_at_a_time = 8;

/// Files beside one another, as the driver reads them.
std::vector<syntax::SharedTree> parse_all(std::span<const text::Source> sources, unsigned workers) {
    std::vector<syntax::SharedTree> trees(sources.size());
    text::side_by_side(sources.size(), workers, files_at_a_time,
                       [&](std::size_t i, unsigned) { trees[i] = syntax::parse(sources[i]); });
    return trees;
}

/// A workspace with the library in front, and the library checked and packed, as a program has it that was built.
struct Loaded {
    explicit Loaded(std::size_t count)
        : workspace(bench::generate(count)), sources(bench::library()), built_in(sources.size()) {
        const auto library_trees = parse_all(sources, 1);
        packed = check::packed(check::check({sources, library_trees, built_in}, 1).model, sources);
        sources.insert(sources.end(), workspace.recipes.begin(), workspace.recipes.end());
    }
    bench::Workspace workspace;
    std::vector<text::Source> sources;
    std::string packed;
    std::size_t built_in;
};

void count_up(benchmark::State& state, const bench::Workspace& workspace) {
    state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * workspace.bytes));
    state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * workspace.recipes.size()));
}

void bare_syntax(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state)
        for (const auto& recipe : workspace.recipes) benchmark::DoNotOptimize(bench::follows_grammar(recipe.bytes));
    count_up(state, workspace);
}

void parse(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) benchmark::DoNotOptimize(parse_all(workspace.recipes, workers));
    count_up(state, workspace);
}

/// As `scruple check` does it: in passing.
void parse_and_check(benchmark::State& state) {
    const Loaded loaded(static_cast<std::size_t>(state.range(0)));
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) {
        const std::vector<syntax::SharedTree> no_trees(loaded.sources.size());
        std::vector<std::optional<syntax::Outline>> outlines(loaded.sources.size());
        text::side_by_side(loaded.workspace.recipes.size(), workers, files_at_a_time, [&](std::size_t i, unsigned) {
            outlines[loaded.built_in + i] = syntax::outline(loaded.sources[loaded.built_in + i]);
        });
        const auto checked = check::check_behind(check::unpacked(loaded.packed, loaded.sources),
                                                 {loaded.sources, no_trees, loaded.built_in, outlines}, workers);
        if (diagnostics::any_error(checked.diagnostics)) state.SkipWithError("the generated recipes have faults");
    }
    count_up(state, loaded.workspace);
}

/// With the trees and the whole model, as commands do it that go on from them.
void parse_and_model(benchmark::State& state) {
    const Loaded loaded(static_cast<std::size_t>(state.range(0)));
    const auto workers = static_cast<unsigned>(state.range(1));
    for (auto _ : state) {
        std::vector<syntax::SharedTree> trees(loaded.built_in);
        std::ranges::move(parse_all(std::span(loaded.sources).subspan(loaded.built_in), workers),
                          std::back_inserter(trees));
        const auto checked = check::check_behind(check::unpacked(loaded.packed, loaded.sources),
                                                 {loaded.sources, trees, loaded.built_in}, workers);
        if (diagnostics::any_error(checked.diagnostics)) state.SkipWithError("the generated recipes have faults");
    }
    count_up(state, loaded.workspace);
}

void read_toml(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(toml::parse(workspace.toml));
    count_up(state, workspace);
}

void read_json(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    std::ostringstream text;
    text << toml::json_formatter(toml::parse(workspace.toml));
    const auto json = text.str();
    for (auto _ : state) benchmark::DoNotOptimize(nlohmann::json::parse(json));
    count_up(state, workspace);
}

void read_yaml(benchmark::State& state) {
    const auto workspace = bench::generate(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(YAML::Load(workspace.yaml));
    count_up(state, workspace);
}

}  // namespace

BENCHMARK(bare_syntax)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(parse)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(parse_and_check)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(parse_and_model)->ArgsProduct({{1, 100, 10000}, {1, 2}})->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(read_toml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(read_json)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(read_yaml)->Arg(1)->Arg(100)->Arg(10000)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
