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

TEST_CASE("files of recipes alone are checked in passing, others keep their trees, and the same is found") {
    const Folder folder;
    for (int i = 100; i < 400; ++i) {
        const auto name = std::to_string(i);
        folder.put("r" + name + ".scruple", "recipe R" + name + "\nwater 1 l\nR" + std::to_string(i + 1) + " 1 ml\n" +
                                                "# " + std::string(300, '.'));
    }
    folder.put("log.scruple", "log\n2026-11-02 mixed R100 1 l\n2026-11-03 discarded R100 1 l of 2026-11-01\n");
    const Loaded kept = loaded(folder);
    auto result = load(folder.path(), {}, Load::in_passing);
    const auto& all = std::get<Loaded>(result);
    std::vector<std::string> with_tree;
    for (std::size_t i = all.built_in; i < all.trees.size(); ++i)
        if (!all.trees[i]->statements.empty()) with_tree.push_back(all.sources[i].path);
    REQUIRE(with_tree.size() == 1);
    CHECK(with_tree[0].ends_with("log.scruple"));
    REQUIRE(all.checked.diagnostics.size() == kept.checked.diagnostics.size());
    CHECK(all.checked.diagnostics.size() >= 300);
    for (std::size_t i = 0; i < kept.checked.diagnostics.size(); ++i)
        CHECK(all.checked.diagnostics[i].message == kept.checked.diagnostics[i].message);
}

TEST_CASE("a folder that is not there is trouble") {
    CHECK(std::holds_alternative<Trouble>(load("/nowhere/at/all")));
}

}  // namespace
}  // namespace scruple::driver
