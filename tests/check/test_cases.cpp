// SPDX-License-Identifier: MIT
// Every file of tests/cases/check against the diagnostics that it states at its end. tests/cases/README.md
// says how they are written; with SCRUPLE_REFRESH=1 in the environment the statements are written anew.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <sstream>

#include "scruple/syntax/outline.hpp"
#include "workspace.hpp"

using namespace scruple;
using diagnostics::Kind;

namespace {

constexpr std::string_view mark = "#>";
const std::string folder = "tests/cases/check";

bool refreshing() {
    const char* set = std::getenv("SCRUPLE_REFRESH");
    return set != nullptr && std::string_view(set) == "1";
}

/// Where the statement of expectations begins: at the first line that begins with the mark.
std::size_t expectations_begin(std::string_view bytes) {
    const auto at = bytes.starts_with(mark) ? 0 : bytes.find("\n" + std::string(mark));
    return at == std::string_view::npos ? bytes.size() : at == 0 ? 0 : at + 1;
}

std::string as_expectations(const test::Workspace& workspace, text::FileId main) {
    std::istringstream lines;
    std::string all;
    for (const auto& diagnostic : workspace.diagnostics()) all += described(workspace, diagnostic, main);
    if (all.empty()) all = "nothing\n";
    lines.str(all);
    std::string block;
    for (std::string line; std::getline(lines, line);) block += std::string(mark) + " " + line + "\n";
    return block;
}

/// The kind that a case is about: the longest kind name its file name begins with.
const diagnostics::KindInfo* kind_of_case(const std::string& path) {
    const auto stem = std::filesystem::path(path).stem().string();
    const diagnostics::KindInfo* best = nullptr;
    for (const auto& kind : diagnostics::all_kinds()) {
        const bool fits = stem == kind.name || stem.starts_with(std::string(kind.name) + "-");
        if (fits && (best == nullptr || kind.name.size() > best->name.size())) best = &kind;
    }
    return best;
}

void check_case(test::Workspace& workspace, const std::string& path) {
    const auto bytes = test::read_whole(path);
    workspace.clear();
    workspace.add(path, bytes);
    workspace.check();
    const auto main = static_cast<text::FileId>(workspace.sources().size() - 1);
    const auto found = as_expectations(workspace, main);
    const auto begin = expectations_begin(bytes);
    if (refreshing() && bytes.substr(begin) != found)
        std::ofstream(path, std::ios::binary) << bytes.substr(0, begin) << found;
    if (!refreshing()) CHECK(bytes.substr(begin) == found);
    const auto* kind = kind_of_case(path);
    REQUIRE_MESSAGE(kind != nullptr, "the file name begins with no kind");
    const auto whole = described(workspace);
    const auto shows = [kind](const diagnostics::Diagnostic& diagnostic) { return diagnostic.kind == kind->kind; };
    CHECK_MESSAGE(std::ranges::any_of(workspace.diagnostics(), shows), "shows no ", kind->name);
    workspace.check_in_passing();
    CHECK(described(workspace) == whole);
}

}  // namespace

TEST_CASE("each case file shows exactly what it states") {
    test::Workspace workspace;
    for (const auto& path : test::recipe_files_in(folder)) {
        CAPTURE(path);
        check_case(workspace, path);
    }
}

TEST_CASE("each kind of diagnostic has a case file") {
    // Not of the checker: the bytes of a file are judged before it is parsed, and a balance after it is checked.
    const std::set<Kind> of_other_rungs = {Kind::not_text, Kind::text_too_large, Kind::too_small_to_weigh};
    std::set<Kind> shown;
    for (const auto& path : test::recipe_files_in(folder)) {
        if (const auto* kind = kind_of_case(path)) shown.insert(kind->kind);
    }
    for (const auto& kind : diagnostics::all_kinds()) {
        CAPTURE(kind.name);
        CHECK(shown.contains(kind.kind) != of_other_rungs.contains(kind.kind));
    }
}

TEST_CASE("the library alone gives no diagnostics") {
    test::Workspace workspace;
    workspace.check();
    CHECK_MESSAGE(workspace.diagnostics().empty(), described(workspace));
    CHECK(workspace.model().chemicals.size() >= 90);
    CHECK(workspace.model().water != check::none);
}

TEST_CASE("each whole recipe compiles alone, without diagnostics") {
    test::Workspace workspace;
    const auto paths = test::recipe_files_in("tests/cases/whole");
    CHECK(paths.size() >= 12);
    for (const auto& path : paths) {
        CAPTURE(path);
        workspace.clear();
        workspace.add_file(path);
        workspace.check();
        CHECK_MESSAGE(workspace.diagnostics().empty(), described(workspace));
    }
}

TEST_CASE("the demo darkroom compiles without errors, as one workspace") {
    test::Workspace workspace;
    for (const auto& path : test::recipe_files_in("recipes")) workspace.add_file(path);
    workspace.check();
    CHECK_MESSAGE(!diagnostics::any_error(workspace.diagnostics()), described(workspace));
}

TEST_CASE("several workers say the same as one, in the same order") {
    test::Workspace workspace;
    // The case files together: many faults, of which doubled names are some.
    for (const auto& path : test::recipe_files_in(folder)) workspace.add_file(path);
    workspace.check(1);
    const auto alone = described(workspace);
    CHECK(workspace.diagnostics().size() > 100);
    for (const unsigned workers : {2u, 5u, 16u}) {
        workspace.check(workers);
        CHECK(described(workspace) == alone);
    }
}

namespace {

/// A file a recipe, and another for each other block.
void add_scattered(test::Workspace& workspace, const std::string& path) {
    const text::Source whole{path, test::read_whole(path)};
    std::vector<std::size_t> cuts{0};
    const auto outline = syntax::outline(whole);
    for (const auto& block : outline.blocks)
        if (!syntax::is_of_recipe(block.block)) cuts.push_back(whole.bytes.rfind('\n', block.span.begin) + 1);
    cuts.push_back(whole.bytes.size());
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        const auto name = path.substr(0, path.size() - 8) + "-" + std::to_string(i) + ".scruple";
        workspace.add(name, whole.bytes.substr(cuts[i - 1], cuts[i] - cuts[i - 1]));
    }
}

}  // namespace

TEST_CASE("what is checked in passing is found the same, each recipe in a file of its own") {
    test::Workspace workspace;
    auto paths = test::recipe_files_in(folder);
    std::ranges::copy(test::recipe_files_in("tests/cases/whole"), std::back_inserter(paths));
    for (const auto& path : paths) {
        CAPTURE(path);
        workspace.clear();
        add_scattered(workspace, path);
        workspace.check_again();
        const auto whole = described(workspace);
        workspace.check_in_passing();
        CHECK(described(workspace) == whole);
    }
    workspace.clear();
    for (const auto& path : paths) add_scattered(workspace, path);
    for (const auto& path : test::recipe_files_in("recipes")) add_scattered(workspace, path);
    workspace.check();
    const auto whole = described(workspace);
    CHECK(workspace.diagnostics().size() > 100);
    for (const unsigned workers : {1u, 2u, 5u}) {
        workspace.check_in_passing(workers);
        CHECK(described(workspace) == whole);
    }
}
