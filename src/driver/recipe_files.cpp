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
        const fs::path& path = entry->path();
        const auto name = std::string_view(path.native()).substr(path.native().rfind('/') + 1);
        if (passed_over(name)) continue;
        std::error_code unknown;
        // The folder itself says so of all but links: no file is asked.
        const bool is_folder = entry->is_directory(unknown);
        if (is_folder ? entry->is_symlink(unknown) : !name.ends_with(".scruple")) continue;
        (is_folder ? folders : files).push_back(folder.empty() ? fs::path(name) : path);
    }
    if (why) return cannot_list(folder, why);
    return std::nullopt;
}

/// By the names of folders and files, one after the other, as paths compare: but they take themselves apart each time.
bool comes_before(const fs::path& one, const fs::path& other) {
    const auto [a, b] = std::ranges::mismatch(one.native(), other.native());
    if (a == one.native().end() || b == other.native().end()) return b != other.native().end();
    const auto rank = [](char c) { return c == '/' ? 0 : static_cast<unsigned char>(c); };
    return rank(*a) < rank(*b);
}

}  // namespace

Trouble too_much(const fs::path& folder, std::size_t most, std::string_view what) {
    return {fmt::format("the folder {} has more than {} {}; name the one folder that is meant with `--in`",
                        folder.native(), most, what)};
}

bool passed_over(std::string_view name) {
    return name.starts_with('.') || name == "build";
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
    std::ranges::sort(files, comes_before);
    return files;
}

}  // namespace scruple::driver
