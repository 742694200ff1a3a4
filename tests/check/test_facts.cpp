// SPDX-License-Identifier: MIT
// What a recipe says of itself and of its solutions stands in the model as it is written.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "workspace.hpp"

using namespace scruple;

namespace {

constexpr const char* lantern = R"(recipe Lantern
    is a       film developer
    strength   soft
    source     a notebook, page 12
    source     told over a fence
    caution    stains
    note       best when fresh
    assumed    the dry salt
    variants   soft, hard

part A
    keeps      6 months full, 2 months half full
    caution    gloves
    note       brown when spent
    water                               700 ml at 45 to 50 C
    metol                               3 g soft, 5 g hard
    stir until clear
    water to make                       1 l

working
    use within 2 h
    capacity   one-shot, at least 250 ml part A per film 135, 10 films 120 per 1 l, 5 % longer per sheet 4x5 in
    replenish  20 ml per film 135, at most 500 ml per 1 l
    part A                              500 ml
    water to make                       1 l

replenisher
    water to make                       1 l
)";

std::vector<std::string> texts(const auto& views) {
    return {views.begin(), views.end()};
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE("the facts of a recipe stand in the model as they are written") {
    test::Workspace workspace;
    workspace.add("lantern.scruple", lantern);
    workspace.check();
    CHECK_MESSAGE(!diagnostics::any_error(workspace.diagnostics()), described(workspace));
    const auto& recipe = workspace.model().recipes.front();
    CHECK(recipe.name == "Lantern");
    CHECK(recipe.normal == "lantern");
    CHECK(recipe.is_a == "film developer");
    CHECK(recipe.strength == "soft");
    CHECK(texts(recipe.sources) == Texts{"a notebook, page 12", "told over a fence"});
    CHECK(texts(recipe.cautions) == Texts{"stains"});
    CHECK(texts(recipe.notes) == Texts{"best when fresh"});
    CHECK(texts(recipe.assumed) == Texts{"the dry salt"});
    CHECK(texts(recipe.variants) == Texts{"soft", "hard"});
    CHECK_FALSE(recipe.built_in);
}

TEST_CASE("the facts of a solution stand in the model as they are written") {
    test::Workspace workspace;
    workspace.add("lantern.scruple", lantern);
    workspace.check();
    const auto& model = workspace.model();
    const auto& part = model.sections[test::section_called(model, "lantern part a")];
    constexpr int month = 86400 * 365 / 12 + 86400 / 48;  // 30.4375 days, as include/scruple/quantity/units.inc has it
    REQUIRE(part.keeps.size() == 2);
    CHECK(part.keeps[0].seconds.low == 6 * month);
    CHECK(part.keeps[0].text == "6 months");
    CHECK(part.keeps[0].when == "full");
    CHECK(part.keeps[1].when == "half full");
    CHECK(texts(part.cautions) == Texts{"gloves"});
    CHECK(texts(part.notes) == Texts{"brown when spent"});
    CHECK(part.makes_ml == 1000);
    CHECK(part.makes_stated);

    const auto& working = model.sections[test::section_called(model, "lantern working")];
    CHECK(*working.use_within == 7200);
    CHECK(working.use_within_text == "2 h");
    CHECK(working.takes_solutions);
    REQUIRE(working.replenish.has_value());
    CHECK(working.replenish->ml == 20);
    CHECK(working.replenish->per.text == "film 135");
    CHECK(*working.replenish->at_most_ml == 500);
    CHECK(*working.replenish->at_most_per_ml == 1000);
}

TEST_CASE("rules of capacity stand in the model as they are written") {
    using What = check::CapacityRule::What;
    test::Workspace workspace;
    workspace.add("lantern.scruple", lantern);
    workspace.check();
    const auto& model = workspace.model();
    const auto& rules = model.sections[test::section_called(model, "lantern working")].capacity;
    REQUIRE(rules.size() == 4);
    CHECK(rules[0].what == What::one_shot);
    CHECK(rules[1].what == What::volume_per);
    CHECK(rules[1].at_least);
    CHECK(rules[1].ml == 250);
    CHECK(rules[1].of == test::section_called(model, "lantern part a"));
    CHECK(rules[1].per.text == "film 135");
    CHECK(rules[2].what == What::items_per);
    CHECK_FALSE(rules[2].at_least);
    CHECK(rules[2].count == 10);
    CHECK(rules[2].item == "10 films 120");
    CHECK(*rules[2].per.ml == 1000);
    CHECK(rules[3].what == What::longer);
    CHECK(rules[3].percent == 5);
    CHECK(rules[3].text == "5 %");
    CHECK(rules[3].per.text == "sheet 4x5 in");
    // 4 by 5 inches of 127/50 cm.
    CHECK(*rules[3].per.area_cm2 == quantity::Exact(20 * 127 * 127, 50 * 50));
}

TEST_CASE("the capacity of a recipe is that of the solution that is used") {
    const std::string stated = "recipe Reed\n    capacity   reused\n";
    const std::string lines = "    water to make   1 l\n";
    const auto has_rules = [](const std::string& text, const std::string& solution) {
        test::Workspace workspace;
        workspace.add("reed.scruple", text);
        workspace.check();
        const auto& model = workspace.model();
        return !check::capacity_of(model, test::section_called(model, solution)).empty();
    };
    CHECK(has_rules(stated + lines, "reed"));
    CHECK(has_rules(stated + "part A\n" + lines, "reed part a"));
    CHECK_FALSE(has_rules(stated + "part A\n" + lines + "part B\n" + lines, "reed part a"));
    CHECK_FALSE(has_rules(stated + "part A\n" + lines + "working\n" + lines, "reed part a"));
    CHECK(has_rules(stated + "part A\n" + lines + "working\n" + lines, "reed working"));
    CHECK(has_rules(stated + lines + "replenisher\n" + lines, "reed"));
    CHECK_FALSE(has_rules(stated + lines + "replenisher\n" + lines, "reed replenisher"));
    CHECK_FALSE(has_rules(stated + lines + "working\n" + lines, "reed"));
}

TEST_CASE("a log may be empty, other blocks may not") {
    test::Workspace workspace;
    workspace.add("log.scruple", "log\n# nothing yet\n");
    workspace.check();
    CHECK_MESSAGE(workspace.diagnostics().empty(), described(workspace));
    workspace.add("plan.scruple", "plan December\n");
    workspace.check();
    REQUIRE(workspace.diagnostics().size() == 1);
    CHECK(workspace.diagnostics().front().kind == diagnostics::Kind::empty_block);
}

TEST_CASE("a chemical may be called by its own name once more, and by another's not") {
    test::Workspace workspace;
    workspace.add("lamp.scruple", "chemical lamp salt\n    also   lamp salt, wick salt\n    form   dry   NaCl\n");
    workspace.check();
    CHECK_MESSAGE(workspace.diagnostics().empty(), described(workspace));
    workspace.add("wick.scruple", "chemical wax\n    also   wick salt\n    form   dry   KCl\n");
    workspace.check();
    REQUIRE(workspace.diagnostics().size() == 1);
    CHECK(workspace.diagnostics().front().kind == diagnostics::Kind::defined_twice);
}
