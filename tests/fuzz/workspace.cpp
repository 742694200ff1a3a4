// SPDX-License-Identifier: MIT
#include "workspace.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <utility>

#include "scruple/diagnostics/show.hpp"
#include "scruple/syntax/outline.hpp"
#include "scruple/syntax/parse.hpp"

namespace fuzz {
namespace {

using namespace scruple;

constexpr int most_rounds = 6;

std::vector<syntax::SharedTree> parsed(const std::vector<text::Source>& sources) {
    std::vector<syntax::SharedTree> trees;
    for (const text::Source& source : sources) trees.push_back(syntax::parse(source));
    return trees;
}

bool is_error(const diagnostics::Diagnostic& d) {
    return diagnostics::info(d.kind).severity == diagnostics::Severity::error;
}

bool is_same(const diagnostics::Diagnostic& a, const diagnostics::Diagnostic& b) {
    return a.kind == b.kind && a.file == b.file && a.span == b.span && a.message == b.message && a.write == b.write;
}

}  // namespace

Workspace::Workspace()
    : library_(driver::library()),
      library_trees_(parsed(library_)),
      rechecker_({library_, library_trees_, library_.size()}) {
    loaded_.sources = library_;
    loaded_.trees = library_trees_;
    loaded_.built_in = loaded_.sources.size();
    loaded_.sources.emplace_back();
    loaded_.trees.emplace_back();
    loaded_.asked = loaded_.sources.size();
}

bool Workspace::take(std::string text) {
    if (last_ != nullptr) std::swap(*last_, loaded_.checked);
    driver::RecipeFile file = driver::recipe_file_of({"fuzzed.scruple", std::move(text)});
    loaded_.sources.back() = std::move(file.source);
    loaded_.trees.back() = file.fault ? syntax::Tree{} : syntax::parse(loaded_.sources.back());
    last_ = &rechecker_.check({loaded_.sources, loaded_.trees, loaded_.built_in}, 1);
    std::swap(*last_, loaded_.checked);
    if (!file.fault) return true;
    file.fault->file = static_cast<text::FileId>(loaded_.built_in);
    loaded_.checked.diagnostics.push_back(std::move(*file.fault));
    diagnostics::sort_and_settle(loaded_.checked.diagnostics);
    return false;
}

bool Workspace::take_what_is_right(std::string text) {
    for (int round = 0; round < most_rounds; ++round) {
        if (!take(std::move(text))) return false;
        if (std::ranges::none_of(loaded_.checked.diagnostics, is_error)) return true;
        text = without_errors();
    }
    return false;
}

bool Workspace::is_same_in_passing() {
    std::vector<std::optional<syntax::Outline>> outlines(loaded_.sources.size());
    outlines.back() = syntax::outline(source());
    if (tree().statements.empty() || !syntax::has_recipes_only(*outlines.back())) return true;
    loaded_.trees.back() = {};
    const auto whole = loaded_.checked.diagnostics;
    std::swap(*last_, loaded_.checked);
    last_ = &rechecker_.check({loaded_.sources, loaded_.trees, loaded_.built_in, outlines}, 1);
    std::swap(*last_, loaded_.checked);
    return std::ranges::equal(whole, loaded_.checked.diagnostics, is_same);
}

std::string Workspace::without_errors() const {
    std::string text = source().bytes;
    for (const diagnostics::Diagnostic& d : loaded_.checked.diagnostics) {
        if (!is_error(d) || d.file != loaded_.built_in) continue;
        const text::Span line = text::line_around(source(), d.span.begin);
        std::fill(text.begin() + line.begin, text.begin() + line.end, ' ');
    }
    return text;
}

Workspace& workspace() {
    static Workspace one;
    return one;
}

}  // namespace fuzz
