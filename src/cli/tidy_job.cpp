// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

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

struct Tidied {
    std::string file;
    enum class State { changed, unchanged, left } state = State::unchanged;
    std::string why;  ///< left
    Exit status = Exit::fine;
};

Tidied left(const fs::path& file, std::string why, Exit status) {
    return {file.native(), Tidied::State::left, std::move(why), status};
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
    if (tidy == source.bytes) return {path.native(), Tidied::State::unchanged, {}, Exit::fine};
    if (only_look) return {path.native(), Tidied::State::changed, {}, Exit::faults};
    if (const auto trouble = driver::write_whole(path, tidy)) return left(path, trouble->message, Exit::trouble);
    return {path.native(), Tidied::State::changed, {}, Exit::fine};
}

std::string summary(const std::vector<Tidied>& reports, bool only_look) {
    const auto changed = std::count_if(reports.begin(), reports.end(),
                                       [](const Tidied& r) { return r.state == Tidied::State::changed; });
    return fmt::format("{} {} looked at, {} {}", reports.size(), reports.size() == 1 ? "file" : "files", changed,
                       only_look ? "would change" : "changed");
}

std::string json_of(const std::vector<Tidied>& reports) {
    using nlohmann::ordered_json;
    constexpr std::array states{"changed", "unchanged", "left"};
    ordered_json files = ordered_json::array();
    for (const Tidied& r : reports)
        files.push_back({{"file", r.file}, {"state", states[static_cast<std::size_t>(r.state)]}, {"why", r.why}});
    return json_text({{"kind", "tidy"}, {"files", files}});
}

}  // namespace

Outcome tidy_job(const Call& call) {
    const As as = call.as();
    const bool only_look = call.has("--check");
    std::vector<Tidied> reports;
    for (const fs::path& file : files_of(call)) reports.push_back(tidied(file, only_look));

    Outcome outcome;
    for (const Tidied& report : reports) {
        outcome.status = std::max(outcome.status, report.status);
        if (report.state == Tidied::State::left)
            outcome.aside += text::printable(report.file + " is left as it is: " + report.why) + "\n";
        if (report.state == Tidied::State::changed) outcome.text += text::printable(report.file) + "\n";
    }
    outcome.done = summary(reports, only_look);
    outcome.text =
        as == As::json ? json_of(reports) : presented(as, "tidy", "Scruple: tidy", outcome.text + outcome.done + "\n");
    return outcome;
}

}  // namespace scruple::cli
