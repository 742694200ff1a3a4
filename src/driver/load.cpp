// SPDX-License-Identifier: MIT
#include <iterator>
#include <utility>

#include "scruple/driver/driver.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/side_by_side.hpp"

namespace scruple::driver {
namespace {

using Reading = std::variant<RecipeFile, Trouble>;

struct Read {
    Loaded loaded;
    std::vector<diagnostics::Diagnostic> faults;
    std::vector<bool> faulty;  ///< by source
};

/// Files differ much in size, so they are handed out one by one.
template <class Job>
void each_side_by_side(std::size_t count, const Job& job) {
    text::side_by_side(count, text::all_cores(), 1, [&](std::size_t i, unsigned) { job(i); });
}

std::vector<Reading> read_all(const std::vector<std::filesystem::path>& paths) {
    std::vector<Reading> readings(paths.size());
    each_side_by_side(paths.size(), [&](std::size_t i) { readings[i] = read_recipe_file(paths[i]); });
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

void parse_all(Read& read) {
    Loaded& loaded = read.loaded;
    loaded.trees.resize(loaded.sources.size());
    each_side_by_side(loaded.sources.size(), [&](std::size_t i) {
        if (!read.faulty[i]) loaded.trees[i] = syntax::parse(loaded.sources[i]);
    });
}

void check_all(Read& read) {
    Loaded& loaded = read.loaded;
    loaded.checked = check::check({loaded.sources, loaded.trees, loaded.built_in});
    if (read.faults.empty()) return;
    auto& all = loaded.checked.diagnostics;
    all.insert(all.end(), std::move_iterator(read.faults.begin()), std::move_iterator(read.faults.end()));
    diagnostics::sort_and_settle(all);
}

}  // namespace

Loaded load(std::vector<RecipeFile> files, std::vector<text::Source> asked) {
    Read read;
    for (const text::Source& source : library()) take(read, {source, std::nullopt});
    read.loaded.built_in = read.loaded.sources.size();
    for (RecipeFile& file : files) take(read, std::move(file));
    read.loaded.asked = read.loaded.sources.size();
    for (text::Source& source : asked) take(read, {std::move(source), std::nullopt});

    parse_all(read);
    check_all(read);
    return std::move(read.loaded);
}

std::variant<Loaded, Trouble> load(const std::filesystem::path& folder, std::vector<text::Source> asked) {
    auto paths = recipe_files(folder);
    if (auto* trouble = std::get_if<Trouble>(&paths)) return std::move(*trouble);
    std::vector<RecipeFile> files;
    for (Reading& reading : read_all(std::get<0>(paths))) {
        if (auto* trouble = std::get_if<Trouble>(&reading)) return std::move(*trouble);
        files.push_back(std::move(std::get<RecipeFile>(reading)));
    }
    return load(std::move(files), std::move(asked));
}

}  // namespace scruple::driver
