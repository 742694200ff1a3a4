// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <sys/stat.h>

#include <algorithm>

#include "driver/folder.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> found(const Folder& folder) {
    const auto files = recipe_files(folder.path());
    REQUIRE(std::holds_alternative<std::vector<fs::path>>(files));
    std::vector<std::string> names;
    for (const fs::path& file : std::get<0>(files)) names.push_back(file.lexically_relative(folder.path()).native());
    return names;
}

std::string trouble_of(const std::variant<std::vector<fs::path>, Trouble>& files) {
    REQUIRE(std::holds_alternative<Trouble>(files));
    return std::get<Trouble>(files).message;
}

RecipeFile read(const fs::path& path) {
    auto file = read_recipe_file(path);
    REQUIRE(std::holds_alternative<RecipeFile>(file));
    return std::get<RecipeFile>(std::move(file));
}

TEST_CASE("recipe files are found in all folders, sorted, and others passed over") {
    const Folder folder;
    for (const char* name : {"b.scruple", "a/z.scruple", "a/b/c.scruple", "Z.scruple", "notes.txt", ".hidden.scruple",
                             ".git/x.scruple", "build/x.scruple", "a/build/x.scruple", "scruple"})
        folder.put(name, "");
    fs::create_directory(folder / "folder.scruple");
    CHECK(found(folder) == std::vector<std::string>{"Z.scruple", "a/b/c.scruple", "a/z.scruple", "b.scruple"});
}

// The order is that of std::filesystem::path, [fs.path.compare] of the C++ standard: name by name.
TEST_CASE("names are compared folder by folder, and not with what parts them") {
    const Folder folder;
    for (const char* name :
         {"a/b.scruple", "a-b/b.scruple", "a b/b.scruple", "a.scruple", "a/b/c.scruple", "a/b-c.scruple",
          "a.d/b.scruple", "ä/b.scruple", "a0.scruple", "a/a.scruple", "A/b.scruple"})
        folder.put(name, "");
    const auto files = std::get<0>(recipe_files(folder.path()));
    CHECK(files.size() == 11);
    CHECK(std::is_sorted(files.begin(), files.end()));
}

TEST_CASE("links to folders are not followed, links to files are") {
    const Folder folder;
    folder.put("in/a.scruple", "");
    fs::create_directory_symlink(folder.path(), folder / "in/up");
    fs::create_directory_symlink("in", folder / "link");
    fs::create_directory_symlink("in", folder / "link.scruple");
    fs::create_symlink("in/a.scruple", folder / "b.scruple");
    CHECK(found(folder) == std::vector<std::string>{"b.scruple", "in/a.scruple"});
}

TEST_CASE("what is no folder is said") {
    const Folder folder;
    folder.put("file", "");
    CHECK(trouble_of(recipe_files(folder / "nowhere")).find("nowhere cannot be read: No such file") !=
          std::string::npos);
    CHECK(trouble_of(recipe_files(folder / "file")).find("is a file") != std::string::npos);
}

TEST_CASE("a file is read as it stands") {
    const Folder folder;
    const std::string text = "\xEF\xBB\xBFrecipe \xC3\xA9\r\n";
    folder.put("a.scruple", text);
    folder.put("empty.scruple", "");
    CHECK(read(folder / "a.scruple").source.bytes == text);
    CHECK_FALSE(read(folder / "a.scruple").fault);
    CHECK(read(folder / "empty.scruple").source.bytes.empty());
}

TEST_CASE("a file that is no text is a fault at the first byte that is none") {
    const Folder folder;
    folder.put("nul.scruple", std::string_view("ab\0cd", 5));
    folder.put("latin.scruple", "caf\xE9\n");
    const RecipeFile nul = read(folder / "nul.scruple");
    REQUIRE(nul.fault);
    CHECK(nul.fault->kind == diagnostics::Kind::not_text);
    CHECK(nul.fault->span.begin == 2);
    CHECK(nul.source.bytes == "ab");
    const RecipeFile latin = read(folder / "latin.scruple");
    REQUIRE(latin.fault);
    CHECK(latin.fault->message.find("E9") != std::string::npos);
    CHECK(latin.source.bytes == "caf");
}

TEST_CASE("a file past the limit is a fault and is not read") {
    const Folder folder;
    folder.put("large.scruple", "");
    fs::resize_file(folder / "large.scruple", syntax::longest_text + 1);
    const RecipeFile large = read(folder / "large.scruple");
    REQUIRE(large.fault);
    CHECK(large.fault->kind == diagnostics::Kind::text_too_large);
    CHECK(large.source.bytes.empty());
    // Just at the limit it is taken: what is wrong with it then is that it holds NUL bytes.
    fs::resize_file(folder / "large.scruple", syntax::longest_text);
    CHECK(read(folder / "large.scruple").fault->kind == diagnostics::Kind::not_text);
}

TEST_CASE("what is not there or is no plain file is trouble, and no wait") {
    const Folder folder;
    REQUIRE(::mkfifo((folder / "pipe.scruple").c_str(), 0600) == 0);
    fs::create_symlink("nowhere", folder / "link.scruple");
    for (const char* name : {"pipe.scruple", "link.scruple", "none.scruple", "."})
        CHECK(std::holds_alternative<Trouble>(read_recipe_file(folder / name)));
}

TEST_CASE("the library that is built in is the text of the folder src/library") {
    const fs::path folder = fs::path(SCRUPLE_SOURCE_DIR) / "src/library";
    const auto files = recipe_files(folder);
    REQUIRE(std::get<0>(files).size() == library().size());
    for (std::size_t i = 0; i < library().size(); ++i) {
        const fs::path& file = std::get<0>(files)[i];
        CHECK(library()[i].path == "built-in/" + file.filename().native());
        CHECK(library()[i].bytes == read(file).source.bytes);
        CHECK_FALSE(library()[i].bytes.empty());
    }
}

}  // namespace
}  // namespace scruple::driver
