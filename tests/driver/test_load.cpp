// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>

#include "driver/folder.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::driver {
namespace {

constexpr std::string_view heron = R"(recipe Heron
    water                        700 ml at 40 C
    sodium sulfite (anhydrous)   40 g
    stir until clear
    water to make                1 l
)";

Loaded loaded(const Folder& folder, std::vector<text::Source> asked = {}) {
    auto result = load(folder.path(), std::move(asked));
    REQUIRE(std::holds_alternative<Loaded>(result));
    return std::get<Loaded>(std::move(result));
}

TEST_CASE("a folder of recipes is read and checked, the library first") {
    const Folder folder;
    folder.put("heron.scruple", heron);
    const Loaded all = loaded(folder);
    CHECK(all.built_in == library().size());
    CHECK(all.sources.size() == all.built_in + 1);
    CHECK(all.trees.size() == all.sources.size());
    CHECK(all.checked.diagnostics.empty());
    REQUIRE(all.checked.model.recipes.size() == 1);
    CHECK(all.checked.model.recipes[0].name == "Heron");
    CHECK(all.checked.model.chemicals.size() > 90);
}

TEST_CASE("a file that cannot be taken is a diagnostic, and the others are read") {
    const Folder folder;
    folder.put("a.scruple", std::string_view("\0", 1));
    folder.put("heron.scruple", heron);
    const Loaded all = loaded(folder);
    REQUIRE(all.checked.diagnostics.size() == 1);
    CHECK(all.checked.diagnostics[0].kind == diagnostics::Kind::not_text);
    CHECK(all.sources[all.checked.diagnostics[0].file].path.ends_with("a.scruple"));
    CHECK(all.checked.model.recipes.size() == 1);
}

TEST_CASE("what is asked is checked beside the files") {
    const Folder folder;
    folder.put("heron.scruple", heron);
    const Loaded all = loaded(folder, {{"question", "recipe asked\nmetol 0,7 g\n"}});
    REQUIRE(all.asked == all.sources.size() - 1);
    REQUIRE(all.checked.diagnostics.size() == 1);
    CHECK(all.checked.diagnostics[0].kind == diagnostics::Kind::decimal_comma);
    CHECK(all.checked.diagnostics[0].file == all.asked);
}

TEST_CASE("many files come out in the order of their paths") {
    const Folder folder;
    for (int i = 100; i < 400; ++i)
        folder.put("r" + std::to_string(i) + ".scruple", "recipe R" + std::to_string(i) + "\nwater 1 l\n");
    const Loaded all = loaded(folder);
    CHECK(all.sources.size() == all.built_in + 300);
    CHECK(std::is_sorted(all.sources.begin() + static_cast<std::ptrdiff_t>(all.built_in), all.sources.end(),
                         [](const auto& a, const auto& b) { return a.path < b.path; }));
    CHECK(all.checked.model.recipes.size() == 300);
}

TEST_CASE("a folder that is not there is trouble") {
    CHECK(std::holds_alternative<Trouble>(load("/nowhere/at/all")));
}

}  // namespace
}  // namespace scruple::driver
