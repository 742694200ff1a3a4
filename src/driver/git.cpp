// SPDX-License-Identifier: MIT
#include "scruple/driver/git.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>

#include "run_program.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

/// One file of a tree: what git calls its bytes, and its path in that tree.
struct Entry {
    std::string object, path;
};

std::string first_line(std::string_view text) {
    return std::string(text.substr(0, text.find('\n')));
}

class Git {
  public:
    explicit Git(const fs::path& folder) : folder_(folder.empty() ? "." : folder.native()) {}

    /// What it said, or why it would not.
    [[nodiscard]] std::variant<std::string, Trouble> says(const std::vector<std::string>& words,
                                                          std::string_view in = {}) const {
        std::vector<std::string> all{"git", "--no-pager", "--literal-pathspecs", "-C", folder_};
        all.insert(all.end(), words.begin(), words.end());
        auto run = run_program(all, in);
        if (auto* trouble = std::get_if<Trouble>(&run)) return std::move(*trouble);
        auto& finished = std::get<Finished>(run);
        if (finished.status == 0) return std::move(finished.out);
        return Trouble{"git says: " + first_line(finished.aside)};
    }

    /// The object that a name stands for, in hexadecimal digits.
    [[nodiscard]] std::variant<std::string, Trouble> object(const std::string& name) const {
        auto said = says({"rev-parse", "--verify", "--quiet", "--end-of-options", name});
        if (auto* trouble = std::get_if<Trouble>(&said)) return std::move(*trouble);
        // Before git 2.43 the option itself is printed too.
        std::string_view text = std::get<std::string>(said);
        while (!text.empty() && text.back() == '\n') text.remove_suffix(1);
        const std::size_t line = text.rfind('\n');
        return std::string(line == std::string_view::npos ? text : text.substr(line + 1));
    }

  private:
    std::string folder_;
};

bool is_hexadecimal(std::string_view word) {
    return word.size() >= 40 && word.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

bool belongs(const fs::path& path) {
    return path.extension() == ".scruple" &&
           std::none_of(path.begin(), path.end(), [](const auto& name) { return passed_over(name.native()); });
}

/// From `100644 blob OBJECT\tPATH`; plain files alone, no links and no repositories within.
std::optional<Entry> entry_of(std::string_view line) {
    const std::size_t tab = line.find('\t');
    if (tab == std::string_view::npos || !line.starts_with("100")) return std::nullopt;
    const std::string_view about = line.substr(0, tab);
    const std::string_view object = about.substr(about.rfind(' ') + 1);
    std::string path(line.substr(tab + 1));
    if (!is_hexadecimal(object) || !belongs(path)) return std::nullopt;
    return Entry{std::string(object), std::move(path)};
}

std::vector<Entry> entries_of(std::string_view listing) {
    std::vector<Entry> entries;
    while (!listing.empty()) {
        const std::size_t end = std::min(listing.find('\0'), listing.size());
        if (auto entry = entry_of(listing.substr(0, end))) entries.push_back(std::move(*entry));
        listing.remove_prefix(std::min(end + 1, listing.size()));
    }
    std::ranges::sort(entries, {}, &Entry::path);
    return entries;
}

/// One `OBJECT blob SIZE\n…\n` of `cat-file --batch`; nullopt where the rest is none.
std::optional<std::string_view> next_blob(std::string_view& rest) {
    const std::string_view head = rest.substr(0, rest.find('\n'));
    const std::string_view digits = head.substr(head.rfind(' ') + 1);
    std::size_t size = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), size);
    if (error != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
    if (head.size() == rest.size() || rest.size() - head.size() < size + 2) return std::nullopt;
    const std::string_view blob = rest.substr(head.size() + 1, size);
    rest.remove_prefix(head.size() + size + 2);
    return blob;
}

std::variant<std::vector<RecipeFile>, Trouble> read(const Git& git, const std::string& name,
                                                    const std::vector<Entry>& entries) {
    std::string asked;
    for (const Entry& entry : entries) asked += entry.object + "\n";
    const auto said = git.says({"cat-file", "--batch"}, asked);
    if (const auto* trouble = std::get_if<Trouble>(&said)) return *trouble;
    std::string_view rest = std::get<std::string>(said);
    std::vector<RecipeFile> files;
    for (const Entry& entry : entries) {
        const auto blob = next_blob(rest);
        if (!blob) return Trouble{fmt::format("git does not hand over {}:{}", name, entry.path)};
        files.push_back(recipe_file_of({fmt::format("{}:{}", name, entry.path), std::string(*blob)}));
    }
    return files;
}

std::variant<std::vector<RecipeFile>, Trouble> files_of(const Git& git, const std::string& name,
                                                        const std::string& tree) {
    const auto listed = git.says({"ls-tree", "-r", "-z", "--full-tree", tree});
    if (const auto* trouble = std::get_if<Trouble>(&listed)) return *trouble;
    return read(git, name, entries_of(std::get<std::string>(listed)));
}

Trouble nothing_there(const std::string& revision) {
    return {fmt::format("`{}` is no file and no folder, and git knows no revision that is called so", revision)};
}

/// `REVISION:PATH/TO/FILE`: the whole of that revision is read, since a recipe may need the others.
std::variant<Revision, Trouble> one_file(const Git& git, const std::string& revision) {
    const std::size_t colon = revision.find(':');
    const std::string name = revision.substr(0, colon);
    const auto tree = git.object(name + "^{tree}");
    if (const auto* trouble = std::get_if<Trouble>(&tree)) return *trouble;
    auto files = files_of(git, name, std::get<std::string>(tree));
    if (auto* trouble = std::get_if<Trouble>(&files)) return std::move(*trouble);
    return Revision{std::move(std::get<0>(files)), revision};
}

}  // namespace

std::variant<Revision, Trouble> files_at(const fs::path& folder, const std::string& revision) {
    const Git git(folder);
    const bool says_path = revision.find(':') != std::string::npos;
    const auto object = git.object(says_path ? revision : revision + ":./");
    const auto* name = std::get_if<std::string>(&object);
    if (name == nullptr || !is_hexadecimal(*name)) {
        const auto& said = std::get_if<Trouble>(&object);
        return said != nullptr && !said->message.starts_with("git says") ? *said : nothing_there(revision);
    }
    const auto type = git.says({"cat-file", "-t", *name});
    if (says_path && std::holds_alternative<std::string>(type) && std::get<std::string>(type) == "blob\n")
        return one_file(git, revision);
    auto files = files_of(git, revision, *name);
    if (auto* trouble = std::get_if<Trouble>(&files)) return std::move(*trouble);
    return Revision{std::move(std::get<0>(files)), {}};
}

}  // namespace scruple::driver
