// SPDX-License-Identifier: MIT
// Workspaces one after the other, as an editor has them: each is checked as if it were the first.
#include <doctest/doctest.h>

#include <array>
#include <utility>
#include <vector>

#include "scruple/syntax/parse.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

/// Between them these put something into every list of a model, and take it out again.
constexpr std::array edits = {
    "recipe Heron\n    water   1 l\nreplenisher\n    water   500 ml\n",
    "supplier Pier\n    borax (decahydrate)   500 g   4.50 EUR\nbench Sill\n    balance   0.1 g up to 500 g\n",
    "printed Old page\n    | Metol   2 g\n",
    "chemical lampblack\n    form   pure C\nrecipe Coot\n    water      1 l\n    lampblack   1 g\n",
    "recipe Heron\n    water   1 l\n    lampblack   1 g\n",
    "format film 116\n    area   70 sq in from \"a notebook\"\nprocess Pond\n    wash   5 min\n",
    "meeting Reed on borax\n    one of   borax\n    one of   acetic acid\n    harmful  \"it clouds\"\n",
    "recipe Wigeon\n    part A\n    keeps   6 months\n    water   1 l\n    accept Reed on borax because \"so it is\"\n",
    "log\n    2026-11-02 received borax (decahydrate) 500 g\nplan December\n    2026-12-03 6 films 135 through Pond\n",
    "recipe Heron\n    water   1 l\nconversion of sodium metaborate (anhydrous)\n    note   slowly\n",
    "",
};

std::vector<std::size_t> sizes(const check::Model& model) {
    return {model.chemicals.size(),
            model.recipes.size(),
            model.sections.size(),
            model.conversions.size(),
            model.benches.size(),
            model.suppliers.size(),
            model.log.size(),
            model.processes.size(),
            model.plans.size(),
            model.formats.size(),
            model.meetings.size(),
            model.printed.size(),
            model.accepted.size(),
            model.chemical_names.size(),
            model.recipe_names.size(),
            model.section_names.size(),
            model.process_names.size(),
            model.plan_names.size(),
            model.supplier_names.size(),
            model.format_names.size(),
            model.bench_names.size(),
            model.meeting_names.size(),
            model.printed_names.size()};
}

/// Messages, and how many there are of each thing.
using Outcome = std::pair<std::vector<std::string>, std::vector<std::size_t>>;

Outcome outcome_of(const check::Checked& checked) {
    std::vector<std::string> messages;
    for (const auto& diagnostic : checked.diagnostics) messages.push_back(diagnostic.message);
    return {messages, sizes(checked.model)};
}

}  // namespace

TEST_CASE("whatever was checked before, a workspace is checked as if it were the first") {
    const test::Workspace library;
    auto sources = library.sources();
    std::vector<syntax::SharedTree> trees;
    for (const auto& source : sources) trees.push_back(syntax::parse(source));
    const auto built_in = sources.size();
    check::Rechecker rechecker({sources, trees, built_in});
    sources.push_back({"edited.scruple", ""});
    trees.emplace_back();
    const check::Workspace workspace{sources, trees, built_in};
    const auto edit = [&](const char* text) {
        sources.back().bytes = text;
        trees.back() = syntax::parse(sources.back());
    };
    std::vector<Outcome> fresh;
    for (const auto* text : edits) {
        edit(text);
        fresh.push_back(outcome_of(check::check(workspace, 1)));
    }
    std::size_t told = 0;
    for (const auto* before : edits)
        for (std::size_t i = 0; i < edits.size(); ++i) {
            edit(before);
            told += rechecker.check(workspace, 1).diagnostics.size();
            edit(edits[i]);
            CAPTURE(before);
            CAPTURE(edits[i]);
            CHECK(outcome_of(rechecker.check(workspace, 1)) == fresh[i]);
        }
    CHECK(told > edits.size());
}

TEST_CASE("in passing, what a solution of another file takes is not let go") {
    test::Workspace workspace;
    // Recipes alone, and so read in passing.
    workspace.add("parts.scruple",
                  "recipe Heron\npart A\n    water   800 ml\n    sodium sulfite (anhydrous)   100 g\n"
                  "    water to make   1 l\n");
    // A process besides, and so read whole.
    workspace.add("baths.scruple",
                  "process Pond\n    wash   5 min\nrecipe Coot\n    Heron part A   500 ml\n    water to make   1 l\n"
                  "    expect sodium sulfite (anhydrous) 70 to 80 g/l\n");
    workspace.check();
    const std::string whole = described(workspace);
    CHECK(whole.find("holds 50 g/l") != std::string::npos);
    workspace.check_in_passing();
    CHECK(described(workspace) == whole);
}
