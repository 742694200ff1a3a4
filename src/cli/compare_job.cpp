// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "jobs.hpp"
#include "scruple/driver/compare.hpp"
#include "scruple/driver/git.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/text/printable.hpp"
#include "terminal.hpp"

namespace scruple::cli {
namespace {

namespace fs = std::filesystem;
using driver::RecipeFile;
using driver::Side;
using driver::Trouble;

template <class T>
T got(std::variant<T, Trouble> what) {
    if (const auto* trouble = std::get_if<Trouble>(&what)) throw Stop{Exit::trouble, trouble->message};
    return std::move(std::get<T>(what));
}

/// Stands for one side where a file was not there yet, or is no longer.
bool is_nothing(const fs::path& path) {
    return path == "/dev/null";
}

RecipeFile read_file(const fs::path& path) {
    if (is_nothing(path)) return {{path.native(), {}}, std::nullopt};
    return got(driver::read_recipe_file(path));
}

bool is_the_same(const fs::path& a, const fs::path& b) {
    std::error_code unknown;
    return a.filename() == b.filename() || fs::equivalent(a, b, unknown);
}

/// A file with all others of its folder, which it may need, but for those that it or its counterpart stands for.
Side side_of_file(const fs::path& folder, const fs::path& path, const std::vector<fs::path>& stand_ins) {
    std::vector<RecipeFile> files;
    for (const fs::path& other : got(driver::recipe_files(folder)))
        if (std::ranges::none_of(stand_ins, [&](const fs::path& it) { return is_the_same(it, other); }))
            files.push_back(read_file(other));
    files.push_back(read_file(path));
    return {driver::load(std::move(files)), path.native(), path.native()};
}

fs::path folder_of(const Call& call) {
    return call.value("--in").value_or(".");
}

Side side_of(const Call& call, const std::string& word, const std::vector<fs::path>& stand_ins) {
    std::error_code unknown;
    if (fs::is_directory(word, unknown)) return {got(driver::load(word)), {}, word};
    if (fs::exists(word, unknown)) return side_of_file(folder_of(call), word, stand_ins);
    driver::Revision revision = got(driver::files_at(folder_of(call), word));
    return {driver::load(std::move(revision.files)), revision.only, word};
}

Outcome shown(const Call& call, const plan::Compared& compared) {
    switch (call.as()) {
        case As::text:
            return {Exit::fine, emit::compare_text(compared, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::compare_html(compared), {}};
        case As::json:
            return {Exit::fine, emit::compare_json(compared), {}};
    }
    return {};
}

/// `--lines`: what git is to compare in place of the text.
Outcome lines(const Call& call) {
    if (call.words.size() != 1)
        throw Stop{Exit::wrong_call,
                   "`--lines` takes one file, folder or revision: `scruple compare --lines heron.scruple`"};
    const std::string& word = call.words.front();
    return {Exit::fine, text::printable_lines(driver::facts_text(side_of(call, word, {word}))), {}};
}

/// As git calls for a difference: PATH OLD-FILE OLD-HEX OLD-MODE NEW-FILE NEW-HEX NEW-MODE, and two more words where
/// the file has another name; PATH alone while a merge is not done with it (gitattributes(5), git(1) on
/// GIT_EXTERNAL_DIFF).
Outcome for_git(const Call& call) {
    const auto& words = call.words;
    if (words.size() == 1)
        return {Exit::fine, fmt::format("{} is not merged yet\n", text::printable(words.front())), {}};
    if (words.size() != 7 && words.size() != 9)
        throw Stop{Exit::wrong_call,
                   "`--git` is for git, which gives seven words or nine; without it: `scruple compare OLD NEW`"};
    const std::vector<fs::path> stand_ins{words[0], words.size() == 9 ? words[7] : words[0]};
    Side before = side_of_file(folder_of(call), words[1], stand_ins);
    Side after = side_of_file(folder_of(call), words[4], stand_ins);
    before.asked = is_nothing(words[1]) ? words[1] : "a/" + words[0];
    after.asked = is_nothing(words[4]) ? words[4] : "b/" + (words.size() == 9 ? words[7] : words[0]);
    return shown(call, driver::compare(std::move(before), std::move(after)));
}

}  // namespace

Outcome compare_job(const Call& call) {
    static_cast<void>(call.as());
    if (call.has("--lines")) return lines(call);
    if (call.has("--git")) return for_git(call);
    if (call.words.empty() || call.words.size() > 2)
        throw Stop{Exit::wrong_call, "compare what? `scruple compare OLD NEW`: files, folders, or revisions of git"};
    const std::string after = call.words.size() == 2 ? call.words[1] : folder_of(call).native();
    const std::vector<fs::path> stand_ins{call.words[0], after};
    return shown(call, driver::compare(side_of(call, call.words[0], stand_ins), side_of(call, after, stand_ins)));
}

}  // namespace scruple::cli
