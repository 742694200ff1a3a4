// SPDX-License-Identifier: MIT
#include <algorithm>
#include <atomic>
#include <iterator>
#include <optional>
#include <span>
#include <utility>

#include "scruple/check/packed.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/driver/library.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/lines.hpp"
#include "scruple/text/side_by_side.hpp"
#include "too_much.hpp"

namespace scruple::driver {
namespace {

using Reading = std::variant<RecipeFile, Trouble>;

struct Read {
    Loaded loaded;
    std::vector<diagnostics::Diagnostic> faults;
    std::vector<bool> faulty;  ///< by source
};

// A further worker takes about as long to begin as so many files take to be read, or so many bytes to be parsed.
constexpr std::size_t few_files = 24;
constexpr std::size_t few_bytes = 64'000;

/// Files differ much in size, so they are handed out one by one.
template <class Job>
void each_side_by_side(std::size_t count, bool is_little, const Job& job) {
    text::side_by_side(count, is_little ? 1 : text::all_cores(), 1, [&](std::size_t i, unsigned) { job(i); });
}

/// How much has been read. Past the limits no further file is.
struct Amount {
    std::atomic<std::size_t> bytes{0}, lines{0};

    [[nodiscard]] bool is_too_much() const { return bytes > most_bytes || lines > most_lines; }
    void add(const Reading& reading) {
        const auto* file = std::get_if<RecipeFile>(&reading);
        if (file == nullptr) return;
        bytes += file->source.bytes.size();
        const auto& text = file->source.bytes;
        lines += std::max(text::count_of('\n', text), text::count_of('\r', text));
    }
};

std::variant<std::vector<Reading>, Trouble> read_all(const std::filesystem::path& folder,
                                                     const std::vector<std::filesystem::path>& paths) {
    std::vector<Reading> readings(paths.size());
    Amount amount;
    each_side_by_side(paths.size(), paths.size() < few_files, [&](std::size_t i) {
        if (amount.is_too_much()) return;
        readings[i] = read_recipe_file(paths[i]);
        amount.add(readings[i]);
    });
    if (amount.bytes > most_bytes) return too_much(folder, most_bytes, "bytes of recipe files");
    if (amount.lines > most_lines) return too_much(folder, most_lines, "lines in its recipe files");
    return readings;
}

void take(Read& read, RecipeFile file) {
    const auto id = static_cast<text::FileId>(read.loaded.sources.size());
    read.loaded.sources.push_back(std::move(file.source));
    read.faulty.push_back(file.fault.has_value());
    if (!file.fault) return;
    file.fault->file = id;
    read.faults.push_back(std::move(*file.fault));
}

using Outlines = std::vector<std::optional<syntax::Outline>>;

/// All but the library. In passing, files of nothing but recipes are outlined only; of little, that costs more than it
/// saves.
Outlines parse_all(Read& read, Load how) {
    Loaded& loaded = read.loaded;
    loaded.trees.resize(loaded.sources.size());
    const auto files = std::span(loaded.sources).subspan(loaded.built_in);
    std::size_t bytes = 0;
    for (const text::Source& file : files) bytes += file.bytes.size();
    const bool is_little = bytes < few_bytes;
    Outlines outlines(how == Load::whole || is_little ? 0 : loaded.sources.size());
    each_side_by_side(files.size(), is_little, [&](std::size_t i) {
        i += loaded.built_in;
        if (read.faulty[i]) return;
        if (!outlines.empty()) {
            auto outline = syntax::outline(loaded.sources[i]);
            if (syntax::has_recipes_only(outline)) outlines[i] = std::move(outline);
        }
        if (outlines.empty() || !outlines[i]) loaded.trees[i] = syntax::parse(loaded.sources[i]);
    });
    return outlines;
}

check::Checked check_workspace(Loaded& loaded, const Outlines& outlines) {
    const check::Workspace workspace{loaded.sources, loaded.trees, loaded.built_in, outlines};
    if (!check::declares_a_chemical(workspace)) return check::check_behind(library_model(loaded.sources), workspace);
    parse_library(loaded);
    return check::check(workspace);
}

void check_all(Read& read, const Outlines& outlines) {
    Loaded& loaded = read.loaded;
    loaded.checked = check_workspace(loaded, outlines);
    if (read.faults.empty()) return;
    auto& all = loaded.checked.diagnostics;
    all.insert(all.end(), std::move_iterator(read.faults.begin()), std::move_iterator(read.faults.end()));
    diagnostics::sort_and_settle(all);
}

std::variant<std::vector<RecipeFile>, Trouble> read_folder(const std::filesystem::path& folder) {
    auto paths = recipe_files(folder);
    if (auto* trouble = std::get_if<Trouble>(&paths)) return std::move(*trouble);
    auto readings = read_all(folder, std::get<0>(paths));
    if (auto* trouble = std::get_if<Trouble>(&readings)) return std::move(*trouble);
    std::vector<RecipeFile> files;
    files.reserve(std::get<0>(readings).size());
    for (Reading& reading : std::get<0>(readings)) {
        if (auto* trouble = std::get_if<Trouble>(&reading)) return std::move(*trouble);
        files.push_back(std::move(std::get<RecipeFile>(reading)));
    }
    return files;
}

Read taken(std::vector<RecipeFile> files, std::vector<text::Source> asked) {
    Read read;
    read.loaded.sources.reserve(library().size() + files.size() + asked.size());
    for (const text::Source& source : library()) take(read, {source, std::nullopt});
    read.loaded.built_in = read.loaded.sources.size();
    for (RecipeFile& file : files) take(read, std::move(file));
    read.loaded.asked = read.loaded.sources.size();
    for (text::Source& source : asked) take(read, {std::move(source), std::nullopt});
    return read;
}

}  // namespace

Loaded load(std::vector<RecipeFile> files, std::vector<text::Source> asked, Load how) {
    Read read = taken(std::move(files), std::move(asked));
    check_all(read, parse_all(read, how));
    return std::move(read.loaded);
}

std::variant<Loaded, Trouble> load(const std::filesystem::path& folder, std::vector<text::Source> asked, Load how) {
    auto files = read_folder(folder);
    if (auto* trouble = std::get_if<Trouble>(&files)) return std::move(*trouble);
    return load(std::move(std::get<0>(files)), std::move(asked), how);
}

}  // namespace scruple::driver
