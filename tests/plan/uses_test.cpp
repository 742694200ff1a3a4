// SPDX-License-Identifier: MIT
// What films and sheets take of a bath. Recipes and amounts are invented; each sum is written out.
#include "shopping_workspace.hpp"

namespace scruple::test {
namespace {

using check::Exact;

std::string through(const std::string& bath, const std::string& uses) {
    return "\nprocess p\n    " + bath + "   5 min\n    wash   5 min\n\nplan month\n    2026-12-03   " + uses +
           " through p\n";
}

/// The draws of the bath of the process for the plan's only line, by name.
struct Drawing {
    explicit Drawing(const std::string& recipes) : workspace(recipes) {
        const auto bath = workspace.model().processes.front().stages.front().solution;
        for (const auto& drawn : plan::drawn_for(workspace.model(), bath, workspace.uses(), warnings))
            drawn_[check::shown_name(workspace.model(), drawn.solution)] = drawn;
    }
    [[nodiscard]] Exact ml(const std::string& name) const { return at(name).ml; }
    [[nodiscard]] std::string because(const std::string& name) const { return plain_blanks(at(name).because); }
    [[nodiscard]] bool has(const std::string& name) const { return drawn_.contains(name); }

    Workspace workspace;
    std::vector<std::string> warnings;

  private:
    [[nodiscard]] const plan::Drawn& at(const std::string& name) const {
        REQUIRE_MESSAGE(has(name), "nothing is drawn of ", name);
        return drawn_.at(name);
    }
    std::map<std::string, plan::Drawn> drawn_;
};

std::string heron_with(const std::string& capacity) {
    return R"(
recipe Heron
    capacity   )" +
           capacity + R"(

part A
    water                        700 ml
    sodium sulfite (anhydrous)   90 g
    water to make                1 l

working
    water                        600 ml
    part A                       100 ml
    water to make                1 l
)";
}

TEST_CASE("a one-shot bath is the tank's volume for each film, and its parts by their share") {
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135") +
                          through("Heron working", "6 films 135"));
    CHECK(drawing.ml("Heron working") == 1500);  // 6 × 250
    CHECK(drawing.ml("Heron part A") == 150);    // 100 ml in each 1000
    CHECK(drawing.because("Heron working") == "6 films 135: 6 × 250 ml");
    CHECK(drawing.warnings.empty());
}

TEST_CASE("a second format with a volume of its own takes that volume") {
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135, 600 ml working per film 120") +
                          through("Heron working", "2 films 135, 3 films 120"));
    CHECK(drawing.ml("Heron working") == 2300);  // 2 × 250 + 3 × 600
}

TEST_CASE("a format without a volume goes by its area, and that is said") {
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135") +
                          through("Heron working", "3 films 220"));
    CHECK(drawing.ml("Heron working") == 1500);  // a 220 is 160 sq in, a 135 is 80: 3 × 2 × 250
    CHECK(drawing.because("Heron working").find("by area") != std::string::npos);
}

TEST_CASE("an area goes by area, too") {
    // 80 sq in are 80 × 6.4516 = 516.128 cm², so that 0.5 m² are 5000 / 516.128 films' worth.
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135") + through("Heron working", "0.5 m2"));
    CHECK(drawing.ml("Heron working") == Exact(250) * 5000 / Exact(516128, 1000));
}

TEST_CASE("a floor of stock that asks for less than the tank holds changes nothing") {
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135, at least 12 ml part A per film 135") +
                          through("Heron working", "6 films 135"));
    CHECK(drawing.ml("Heron working") == 1500);  // the floor is 12 ml of A, 120 ml of the bath, a film
    CHECK(drawing.because("Heron working") == "6 films 135: 6 × 250 ml (the floor asks for 720 ml)");
}

TEST_CASE("a floor of stock that asks for more than the tank holds wins") {
    const Drawing drawing(heron_with("one-shot, 250 ml working per film 135, at least 40 ml part A per film 135") +
                          through("Heron working", "6 films 135"));
    CHECK(drawing.ml("Heron part A") == 240);    // 6 × 40
    CHECK(drawing.ml("Heron working") == 2400);  // of which part A is a tenth
    CHECK(drawing.because("Heron working").find("at least 40 ml Heron part A") != std::string::npos);
}

TEST_CASE("the floor reaches through a solution that is itself diluted") {
    const Drawing drawing(R"(
recipe Grebe
    water                        800 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

recipe Grebe halved
    Grebe                        500 ml
    water to make                1 l

working
    capacity   one-shot, 200 ml per film 135, at least 60 ml Grebe per film 135
    dilute stock 1+3
)" + through("Grebe halved working", "1 film 135"));
    // One part of four is stock, half of which is Grebe: an eighth. 60 ml of it are 480 ml of the bath.
    CHECK(drawing.ml("Grebe halved working") == 480);
    CHECK(drawing.ml("Grebe") == 60);
}

std::string fixer_that_holds(const std::string& capacity) {
    return R"(
recipe Dunlin
    )" + capacity +
           R"(
    water                                800 ml
    sodium sulfite (anhydrous)           20 g
    water to make                        2 l
)";
}

TEST_CASE("a bath with a capacity is spent in proportion") {
    const Drawing drawing(fixer_that_holds("capacity 20 films 135 per 1 l") + through("Dunlin", "6 films 135"));
    CHECK(drawing.ml("Dunlin") == 300);  // 6 / 20 of a litre
    CHECK(drawing.because("Dunlin") == "6 films 135: 20 films 135 per 1 l: 300 ml");
}

TEST_CASE("capacity is counted in area across formats") {
    // The customary unit: one film 135 of 36 exposures = one film 120 = one sheet 8x10 in = four sheets 4x5 in =
    // 80 square inches (common practice, no source); 8 × 10 = 80 and 4 × 4 × 5 = 80 hold by arithmetic.
    const auto ml = [](const std::string& uses) {
        return Drawing(fixer_that_holds("capacity 20 films 135 per 1 l") + through("Dunlin", uses)).ml("Dunlin");
    };
    CHECK(ml("1 film 135") == 50);
    CHECK(ml("1 film 120") == 50);
    CHECK(ml("1 sheet 8x10 in") == 50);
    CHECK(ml("4 sheets 4x5 in") == 50);
    CHECK(ml("1 film 220") == 100);
    CHECK(ml("2 films 135, 8 sheets 4x5 in") == 200);
}

TEST_CASE("of two capacities the one for the very thing counts") {
    const auto ml = [](const std::string& uses) {
        return Drawing(fixer_that_holds("capacity 20 films 135 per 1 l, 40 sheets 4x5 in per 1 l") +
                       through("Dunlin", uses))
            .ml("Dunlin");
    };
    CHECK(ml("10 films 135") == 500);
    CHECK(ml("10 sheets 4x5 in") == 250);    // by area of films it would be 125
    CHECK(ml("10 sheets 8x10 in") == 1000);  // no line for them, but one for sheets: four times the area
    CHECK(ml("10 films 120") == 500);        // and one for films
}

TEST_CASE("a one-shot bath is poured away, whatever more could go through it") {
    const Drawing drawing(fixer_that_holds("capacity one-shot, 250 ml per film 135, 20 films 135 per 1 l") +
                          through("Dunlin", "2 films 135"));
    CHECK(drawing.ml("Dunlin") == 500);  // and not 100
}

TEST_CASE("a bath without a capacity takes a batch a day, and a warning says what to write") {
    const Drawing drawing(fixer_that_holds("") + through("Dunlin", "6 films 135, 2 films 120"));
    CHECK(drawing.ml("Dunlin") == 2000);
    CHECK(warns(drawing.warnings, "the capacity of Dunlin is not known"));
    CHECK(warns(drawing.warnings, "`capacity 12 films 135 per 1 l`"));
}

TEST_CASE("a replenished bath takes its replenisher") {
    const Drawing drawing(R"(
recipe Siskin

working
    replenish  20 ml per film 135
    water                        3 l
    sodium sulfite (anhydrous)   300 g
    water to make                4 l

replenisher
    water                        700 ml
    sodium sulfite (anhydrous)   90 g
    water to make                1 l
)" + through("Siskin working", "5 films 135, 1 film 220"));
    CHECK(drawing.ml("Siskin replenisher") == 140);  // 5 × 20, and 2 × 20 by area
    CHECK_FALSE(drawing.has("Siskin working"));
}

}  // namespace
}  // namespace scruple::test
