// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <system_error>

#include "scruple/driver/driver.hpp"
#include "too_much.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

Trouble cannot_list(const fs::path& folder, const std::error_code& why) {
    return {fmt::format("the folder {} cannot be read: {}", folder.native(), why.message())};
}

// Collects the folder's own recipe files in `files` and its folders in `folders`; `entries` counts what is looked at.
std::optional<Trouble> list(const fs::path& folder, std::vector<fs::path>& files, std::vector<fs::path>& folders,
                            std::size_t& entries) {
    std::error_code why;
    fs::directory_iterator entry(folder.empty() ? "." : folder, why);
    for (; !why && entry != fs::directory_iterator(); entry.increment(why)) {
        if (++entries > most_entries) return std::nullopt;
        const fs::path name = entry->path().filename();
        if (passed_over(name)) continue;
        std::error_code unknown;
        // The folder itself says so of all but links: no file is asked.
        if (entry->is_directory(unknown)) {
            if (!entry->is_symlink(unknown)) folders.push_back(folder / name);
        } else if (name.extension() == ".scruple") {
            files.push_back(folder / name);
        }
    }
    if (why) return cannot_list(folder, why);
    return std::nullopt;
}

}  // namespace

Trouble too_much(const fs::path& folder, std::size_t most, std::string_view what) {
    return {fmt::format("the folder {} has more than {} {}; name the one folder that is meant with `--in`",
                        folder.native(), most, what)};
}

bool passed_over(const fs::path& name) {
    return name.native().starts_with('.') || name == "build";
}

std::variant<std::vector<fs::path>, Trouble> recipe_files(const fs::path& folder) {
    std::error_code why;
    if (!fs::is_directory(folder, why)) {
        if (!why) return Trouble{fmt::format("{} is a file, and a folder of recipes is wanted", folder.native())};
        return cannot_list(folder, why);
    }
    const fs::path start = folder.lexically_normal();
    std::vector<fs::path> files;
    std::vector<fs::path> folders{start == "." || start == "./" ? fs::path() : start};
    std::size_t entries = 0;
    while (!folders.empty()) {
        const fs::path next = std::move(folders.back());
        folders.pop_back();
        if (auto trouble = list(next, files, folders, entries)) return *trouble;
        if (entries > most_entries) return too_much(folder, most_entries, "files and folders in it");
    }
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace scruple::driver
