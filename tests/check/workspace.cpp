// SPDX-License-Identifier: MIT
#include "workspace.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

#include "scruple/syntax/outline.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::test {

Workspace::Workspace() {
    for (const auto& path : recipe_files_in("src/library")) add_file(path);
    built_in_ = sources_.size();
    REQUIRE(built_in_ > 0);
}

void Workspace::add(std::string path, std::string bytes) {
    sources_.push_back({std::move(path), std::move(bytes)});
    trees_.push_back(syntax::parse(sources_.back()));
}

void Workspace::add_file(const std::string& path) {
    add(std::filesystem::relative(path, SCRUPLE_SOURCE_DIR).string(), read_whole(path));
}

void Workspace::clear() {
    checked_ = {};
    sources_.resize(built_in_);
    trees_.resize(built_in_);
}

const check::Checked& Workspace::check(unsigned workers) {
    checked_ = {};
    checked_ = check::check({sources_, trees_, built_in_}, workers);
    return checked_;
}

const std::vector<diagnostics::Diagnostic>& Workspace::recheck(std::span<const syntax::SharedTree> trees,
                                                               const Outlines& outlines, unsigned workers) {
    if (!rechecker_) {
        const auto library = static_cast<std::ptrdiff_t>(built_in_);
        rechecker_.emplace(check::Workspace{std::span(sources_.begin(), sources_.begin() + library),
                                            std::span(trees_.begin(), trees_.begin() + library), built_in_});
    }
    checked_ = {};
    checked_.diagnostics = rechecker_->check({sources_, trees, built_in_, outlines}, workers).diagnostics;
    return checked_.diagnostics;
}

const std::vector<diagnostics::Diagnostic>& Workspace::check_again(unsigned workers) {
    return recheck(trees_, {}, workers);
}

const std::vector<diagnostics::Diagnostic>& Workspace::check_in_passing(unsigned workers) {
    Outlines outlines(sources_.size());
    auto trees = trees_;
    for (std::size_t file = built_in_; file < sources_.size(); ++file) {
        auto outline = syntax::outline(sources_[file]);
        if (!syntax::has_recipes_only(outline)) continue;
        outlines[file] = std::move(outline);
        trees[file] = {};
    }
    return recheck(trees, outlines, workers);
}

std::vector<std::string> recipe_files_in(const std::string& folder) {
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(SCRUPLE_SOURCE_DIR) + "/" + folder)) {
        if (entry.path().extension() == ".scruple") paths.push_back(entry.path().string());
    }
    std::ranges::sort(paths);
    return paths;
}

std::string read_whole(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    REQUIRE_MESSAGE(file, "cannot read ", path);
    std::ostringstream all;
    all << file.rdbuf();
    return all.str();
}

namespace {

std::string place(const Workspace& workspace, text::FileId file, text::Span span, text::FileId main) {
    const auto& source = workspace.sources().at(file);
    const auto at = text::position_of(source, span.begin);
    const std::string path = file == main ? "" : source.path + ":";
    return path + std::to_string(at.line) + "." + std::to_string(at.column);
}

}  // namespace

std::string described(const Workspace& workspace, const diagnostics::Diagnostic& diagnostic, text::FileId main) {
    const auto& kind = diagnostics::info(diagnostic.kind);
    std::string text = place(workspace, diagnostic.file, diagnostic.span, main);
    text += " " + std::string(diagnostics::name_of(kind.severity)) + " " + std::string(kind.name) + "\n";
    text += "    " + diagnostic.message + "\n";
    constexpr std::size_t longest = 70;
    text += "    marks  " +
            text::printable(text::shortened(workspace.sources().at(diagnostic.file).at(diagnostic.span), longest)) +
            "\n";
    if (!diagnostic.write.empty()) text += "    write  " + diagnostic.write + "\n";
    for (const auto& other : diagnostic.related)
        text += "    see    " + place(workspace, other.file, other.span, main) + " " + other.note + "\n";
    return text;
}

std::string described(const Workspace& workspace) {
    std::string text;
    for (const auto& diagnostic : workspace.diagnostics()) text += described(workspace, diagnostic, check::none);
    return text;
}

check::Id section_called(const check::Model& model, const std::string& normal_name) {
    const auto found = model.section_names.find(normal_name);
    REQUIRE_MESSAGE(found != model.section_names.end(), normal_name);
    return found->second;
}

const check::Form& form_called(const check::Model& model, const std::string& chemical, std::string_view form) {
    const auto found = model.chemical_names.find(chemical);
    REQUIRE_MESSAGE(found != model.chemical_names.end(), chemical);
    const auto& forms = model.chemicals[found->second.first].forms;
    REQUIRE_FALSE(forms.empty());
    if (form.empty()) return forms.front();
    const auto same = std::ranges::find(forms, form, &check::Form::name);
    REQUIRE_MESSAGE(same != forms.end(), chemical, " (", form, ")");
    return *same;
}

}  // namespace scruple::test
