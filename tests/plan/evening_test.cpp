// SPDX-License-Identifier: MIT
// An evening from recipe text. Recipes are invented.
#include "scruple/plan/evening.hpp"

#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

const std::string evening_recipes = R"(
recipe Plover
    capacity one-shot, 300 ml working per film 135

part A
    keeps      6 months
    water                        700 ml at 50 C
    metol                        3 g
    stir until clear
    sodium sulfite (anhydrous)   100 g
    stir 3 min
    cool to 20 C
    water to make                1 l

working
    use within 2 h
    dilute part A 1+1

recipe Dunlin
    keeps      3 months
    capacity   10 films 135 per 1 l
    water                        700 ml
    sodium carbonate (anhydrous) 30 g
    wait 20 min, stirring every 5 min
    water to make                1 l

process p
    Plover working   10 min
    Dunlin           1 min

plan one
    2026-12-01   4 films 135 through p
    2026-12-08   4 films 135 through p
)";

plan::EveningRequest first_evening() {
    plan::EveningRequest request;
    request.plan = 0;
    request.day = 20788;  // 2026-12-01
    return request;
}

plan::Evening evening_of(const Workspace& workspace, const plan::EveningRequest& request) {
    auto made = plan::evening(workspace.model(), request);
    REQUIRE(std::holds_alternative<plan::Evening>(made));
    return std::get<plan::Evening>(made);
}

std::vector<plan::EveningStep> steps_of(const plan::Evening& evening, const std::string& name) {
    std::vector<plan::EveningStep> steps;
    for (const auto& step : evening.steps)
        if (evening.solutions[step.solution].name == name) steps.push_back(step);
    return steps;
}

TEST_CASE("each recipe's order is kept, and waits are waited out at other work") {
    const Workspace workspace(evening_recipes);
    const auto evening = evening_of(workspace, first_evening());
    REQUIRE(evening.solutions.size() == 3);
    CHECK(evening.minutes < evening.one_after_the_other);
    CHECK(evening.proven);
    for (const auto& solution : evening.solutions) {
        int before = 0;
        plan::Minutes free = 0;
        for (const auto& step : steps_of(evening, solution.name)) {
            CHECK(step.start >= free);
            free = step.start + step.hands + step.alone;
            if (step.work.n == 0) continue;
            CHECK(step.work.n > before);
            before = step.work.n;
        }
    }
}

TEST_CASE("what is made of another waits for it, and is ready last") {
    const Workspace workspace(evening_recipes);
    const auto evening = evening_of(workspace, first_evening());
    plan::Minutes ready = 0;
    for (const auto& solution : evening.solutions)
        if (solution.name == "Plover part A") ready = solution.ready;
    REQUIRE(ready > 0);
    for (const auto& step : steps_of(evening, "Plover working"))
        if (step.work.what == "Plover part A") CHECK(step.start >= ready);
}

TEST_CASE("what is warm is not left to cool on its own") {
    const Workspace workspace(evening_recipes);
    const auto steps = steps_of(evening_of(workspace, first_evening()), "Plover part A");
    REQUIRE(steps.size() > 5);
    for (std::size_t i = 1; i < 6; ++i)
        CHECK(steps[i].start - (steps[i - 1].start + steps[i - 1].hands + steps[i - 1].alone) <= 5);
}

TEST_CASE("700 ml from 20 to 50 degrees is 87.9 kJ at 4.184 J/(g K): at 1 kW two minutes, rounded up") {
    const Workspace workspace(evening_recipes);
    const auto steps = steps_of(evening_of(workspace, first_evening()), "Plover part A");
    CHECK(steps.front().work.what == "put on to warm: water");
    CHECK(steps.front().alone == 2);
}

TEST_CASE("what the bench says of its own pace goes before what is assumed") {
    const Workspace workspace(evening_recipes + R"(
bench Quay
    balance   0.1 g up to 500 g
    pace      4 min to weigh
    pace      90 s to make up
    pace      7 min to stir
)");
    auto request = first_evening();
    request.bench = 0;
    for (const auto& step : steps_of(evening_of(workspace, request), "Plover part A")) {
        if (step.work.what == "metol (sulfate)" || step.work.what == "metol") CHECK(step.hands == 4);
        if (step.work.what_to_do == plan::Work::Do::make_up) CHECK(step.hands == 2);
        if (step.work.what_to_do == plan::Work::Do::stir && !step.work.seconds) CHECK(step.hands == 7);
    }
}

TEST_CASE("a wait with stirring is a stirring every so often") {
    const Workspace workspace(evening_recipes);
    std::size_t stirrings = 0;
    for (const auto& step : steps_of(evening_of(workspace, first_evening()), "Dunlin"))
        if (step.alone == 4) ++stirrings;
    CHECK(stirrings == 4);
}

TEST_CASE("days on which nothing is mixed, and too few vessels, are refused") {
    const Workspace workspace(evening_recipes);
    auto request = first_evening();
    request.day += 1;
    const auto none = plan::evening(workspace.model(), request);
    REQUIRE(std::holds_alternative<plan::Refusal>(none));
    CHECK(std::get<plan::Refusal>(none).message.find("2026-12-01") != std::string::npos);
    const Workspace two_baths(R"(
recipe Knot
    use within 2 h
    capacity 10 films 135 per 1 l
    water                        700 ml
    metol                        3 g
    water to make                1 l

recipe Ruff
    use within 2 h
    capacity 10 films 135 per 1 l
    water                        700 ml
    metol                        3 g
    water to make                1 l

process p
    Knot   1 min
    Ruff   1 min

plan one
    2026-12-01   4 films 135 through p
)");
    request = first_evening();
    request.vessels = 1;
    CHECK(std::holds_alternative<plan::Refusal>(plan::evening(two_baths.model(), request)));
    request.vessels = 2;
    CHECK(evening_of(two_baths, request).vessels == 2);
}

}  // namespace
}  // namespace scruple::test
