// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "jobs.hpp"
#include "present.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::cli {
namespace {

namespace fs = std::filesystem;
using driver::Trouble;

using State = emit::TidiedFile::State;

struct Tidied {
    emit::TidiedFile file;
    Exit status = Exit::fine;
};

Tidied left(const fs::path& path, std::string why, Exit status) {
    return {{path.native(), State::left, std::move(why)}, status};
}

std::vector<fs::path> listed(const fs::path& folder) {
    auto files = driver::recipe_files(folder);
    if (const auto* trouble = std::get_if<Trouble>(&files)) throw Stop{Exit::trouble, trouble->message};
    return std::move(std::get<0>(files));
}

std::vector<fs::path> files_of(const Call& call) {
    if (call.words.empty()) return listed(call.value("--in").value_or("."));
    std::vector<fs::path> files;
    for (const fs::path path : call.words) {
        std::error_code unknown;
        const bool folder = fs::is_directory(path, unknown);
        for (const fs::path& file : folder ? listed(path) : std::vector{path}) files.push_back(file);
    }
    return files;
}

bool is_read(const syntax::Node& node) {
    if (const auto* heading = std::get_if<syntax::Heading>(&node)) return !heading->bad;
    return !std::holds_alternative<syntax::Unread>(node);
}

std::optional<std::string> unreadable_line(const text::Source& source, const syntax::Tree& tree) {
    for (const syntax::Statement& statement : tree.statements) {
        if (is_read(statement.node)) continue;
        return fmt::format("line {} cannot be read", text::position_of(source, statement.span.begin).line);
    }
    return std::nullopt;
}

Tidied tidied(const fs::path& path, bool only_look) {
    // Else a line that is added to a log meanwhile would be lost. What cannot be held cannot be read, which says why.
    const auto held = driver::hold(path);
    auto read = driver::read_recipe_file(path);
    if (const auto* trouble = std::get_if<Trouble>(&read)) return left(path, trouble->message, Exit::trouble);
    const auto& [source, fault] = std::get<driver::RecipeFile>(read);
    if (fault) return left(path, fault->message, Exit::faults);
    const syntax::Tree tree = syntax::parse(source);
    if (auto why = unreadable_line(source, tree)) return left(path, *why, Exit::faults);
    const std::string tidy = emit::tidy_text(source, tree);
    if (tidy == source.bytes) return {{path.native(), State::unchanged, {}}, Exit::fine};
    if (only_look) return {{path.native(), State::changed, {}}, Exit::faults};
    if (const auto trouble = driver::write_whole(path, tidy)) return left(path, trouble->message, Exit::trouble);
    return {{path.native(), State::changed, {}}, Exit::fine};
}

std::string summary(const std::vector<emit::TidiedFile>& files, bool only_look) {
    return fmt::format("{} {} looked at, {} {}", files.size(), files.size() == 1 ? "file" : "files",
                       std::ranges::count(files, State::changed, &emit::TidiedFile::state),
                       only_look ? "would change" : "changed");
}

}  // namespace

Outcome tidy_job(const Call& call) {
    const As as = call.as();
    const bool only_look = call.has("--check");
    Outcome outcome;
    std::vector<emit::TidiedFile> files;
    for (const fs::path& path : files_of(call)) {
        auto [file, status] = tidied(path, only_look);
        outcome.status = std::max(outcome.status, status);
        if (file.state == State::left)
            outcome.aside += text::printable(file.path + " is left as it is: " + file.why) + "\n";
        if (file.state == State::changed) outcome.text += text::printable(file.path) + "\n";
        files.push_back(std::move(file));
    }
    outcome.done = summary(files, only_look);
    outcome.text = as == As::json ? emit::tidied_json(files)
                                  : presented(as, "tidy", "Scruple: tidy", outcome.text + outcome.done + "\n");
    return outcome;
}

}  // namespace scruple::cli
