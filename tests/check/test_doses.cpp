// SPDX-License-Identifier: MIT
// What a measured amount is in grams, ml and moles, by the definitions of ISO 80000-9 (mass and amount concentration,
// mass fraction, volume fraction) and molar masses from the abridged atomic weights of IUPAC 2021: NaOH 39.997,
// CH3COOH 60.052, AgNO3 169.87. The density of acetic acid is the library's own.
#include <doctest/doctest.h>

#include "scruple/check/contents.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

struct Row {
    const char* line;
    double grams;
    double ml;  ///< as measured out; 0 for a solid
    double mol;
};

constexpr Row rows[] = {
    {"sodium hydroxide 8 g", 8, 0, 8 / 39.997},
    {"sodium hydroxide 0.2 mol", 0.2 * 39.997, 0, 0.2},
    {"sodium hydroxide (10 % w/v) 50 ml", 5, 50, 5 / 39.997},
    {"sodium hydroxide (10 % w/v) 0.2 mol", 0.2 * 39.997, 79.994, 0.2},
    {"sodium hydroxide (10 % w/w) 50 g", 5, 50 / 1.1089, 5 / 39.997},
    {"sodium hydroxide (2 mol/l) 50 ml", 0.1 * 39.997, 50, 0.1},
    {"sodium hydroxide (500 mmol/l) 10 ml", 0.005 * 39.997, 10, 0.005},
    {"sodium hydroxide (50 g/l) 20 ml", 1, 20, 1 / 39.997},
    {"silver nitrate (1000 ppm) 10 ml", 0.01, 10, 0.01 / 169.87},
    {"silver nitrate (500 mg/l) 10 ml", 0.005, 10, 0.005 / 169.87},
    {"silver nitrate (10 % w/v) 40 drops", 0.2, 2, 0.2 / 169.87},
    {"acetic acid (glacial) 10 ml", 10.49, 10, 10.49 * 0.995 / 60.052},
    {"acetic acid (glacial) 10 g", 10, 10 / 1.049, 10 * 0.995 / 60.052},
    {"acetic acid (glacial) 40 drops", 2 * 1.049, 2, 2 * 1.049 * 0.995 / 60.052},
    {"acetic acid (glacial) 0.1 mol", 6.0052 / 0.995, 6.0052 / 0.995 / 1.049, 0.1},
    {"acetic acid (glacial, 20 % v/v) 50 ml", 10 * 1.049, 50, 10 * 1.049 / 60.052},
    {"water 50 g", 50, 50, 50 / 18.015},
    {"water 50 ml", 50, 50, 50 / 18.015},
};

constexpr std::string_view around =
    "bench Sink\n    dropper   20 drops per 1 ml water\n"
    "chemical sodium hydroxide\n    form      pure NaOH\n    density   1.1089 g/ml (10 % w/w) from \"a notebook\"\n"
    "chemical acetic acid\n    form      glacial CH3COOH, 99.5 % w/w\n"
    "    density   1.049 g/ml (glacial) from \"a notebook\"\nrecipe Doses\n    water   1 l\n    ";

}  // namespace

TEST_CASE("grams, ml and moles of what is measured out") {
    for (const auto& row : rows) {
        CAPTURE(row.line);
        test::Workspace workspace;
        workspace.add("doses.scruple", std::string(around) + row.line + "\n");
        workspace.check();
        const auto& model = workspace.model();
        const auto& lines = model.sections[test::section_called(model, "doses")].lines;
        REQUIRE_MESSAGE(lines.size() == 2, test::described(workspace));
        const auto dose = check::dose(model, std::get<check::Addition>(lines[1]), 0);
        CHECK(dose.grams.to_double() == doctest::Approx(row.grams).epsilon(1e-4));
        CHECK(dose.ml.to_double() == doctest::Approx(row.ml).epsilon(1e-4));
        CHECK(dose.mol == doctest::Approx(row.mol).epsilon(1e-4));
        CHECK(dose.room_estimated == (row.ml == 0));
    }
}

TEST_CASE("a thousand millimoles are a mole, to the last digit") {
    test::Workspace workspace;
    workspace.add("doses.scruple", std::string(around) +
                                       "sodium hydroxide (500 mmol/l) 10 ml\n"
                                       "    sodium hydroxide (0.5 mol/l) 10 ml\n");
    workspace.check();
    const auto& model = workspace.model();
    const auto& lines = model.sections[test::section_called(model, "doses")].lines;
    REQUIRE_MESSAGE(lines.size() == 3, test::described(workspace));
    CHECK(check::dose(model, std::get<check::Addition>(lines[1]), 0).grams ==
          check::dose(model, std::get<check::Addition>(lines[2]), 0).grams);
}

TEST_CASE("the area of what is counted, in square centimetres") {
    // An inch is 2.54 cm by definition (ISO 80000-3, recalled).
    struct Row {
        const char* item;
        quantity::Exact area_cm2;
    };
    const Row areas[] = {{"20x25 cm", quantity::Exact(500)},
                         {"200x250 mm", quantity::Exact(500)},
                         {"8x10 in", 80 * quantity::Exact(254, 100) * quantity::Exact(254, 100)}};
    for (const auto& row : areas) {
        CAPTURE(row.item);
        test::Workspace workspace;
        workspace.add("area.scruple", std::string("recipe Doses\n    capacity   3 sheets ") + row.item +
                                          " per 1 l\n    water   1 l\n    water to make   1 l\n");
        workspace.check();
        REQUIRE_MESSAGE(workspace.model().recipes.size() == 1, test::described(workspace));
        const auto& rules = workspace.model().recipes.front().capacity;
        REQUIRE_MESSAGE(rules.size() == 1, test::described(workspace));
        CHECK(rules.front().item_area_cm2.value_or(0) == 3 * row.area_cm2);
    }
}

TEST_CASE("of a divided weighing the first piece goes in now, and the rest of it later") {
    test::Workspace workspace;
    workspace.add("divided.scruple",
                  "recipe Divided\n    variants soft, hard\n    water   700 ml\n"
                  "    sodium sulfite (anhydrous)   50 g soft, 60 g hard, 10 g now\n    metol   2 g\n"
                  "    sodium sulfite   the rest\n    potassium bromide   1 g, a pinch now\n"
                  "    potassium bromide   the rest\n    borax (decahydrate)   ? g\n    water to make   1 l\n");
    workspace.check();
    const auto& model = workspace.model();
    const auto& lines = model.sections[test::section_called(model, "divided")].lines;
    REQUIRE_MESSAGE(lines.size() == 8, test::described(workspace));
    const auto now = [&](std::size_t line, std::size_t variant) {
        return check::measure_now(std::get<check::Addition>(lines[line]), variant);
    };
    const auto all = [&](std::size_t line, std::size_t variant) {
        return check::dose(model, std::get<check::Addition>(lines[line]), variant).grams;
    };
    CHECK(now(1, 0) == 10);
    CHECK(now(1, 1) == 10);
    CHECK(all(1, 0) == 50);
    CHECK(all(1, 1) == 60);
    CHECK(now(2, 1) == 2);
    CHECK(now(3, 0) == 40);
    CHECK(now(3, 1) == 50);
    CHECK(all(3, 1) == 0);
    CHECK(now(4, 0) == 0);
    CHECK(now(5, 0) == 1);
    CHECK(now(6, 0) == 0);
    CHECK(all(6, 0) == 0);
}

// A gram of a dissolved solid takes up what its `takes up` line says, by the gram.
TEST_CASE("what a gram takes up is the line's volume by the line's weight") {
    test::Workspace workspace;
    workspace.add("room.scruple", "chemical tallow\n    form       pure C\n    takes up   0.5 ml per 2 g\n");
    workspace.check();
    const auto& model = workspace.model();
    const auto& tallow = model.chemicals[model.chemical_names.at("tallow").first];
    CHECK(check::room_of_gram(tallow, tallow.forms.front()) == quantity::Exact(1, 4));
    CHECK(tallow.forms.front().room_per_gram == quantity::Exact(1, 4));
}

TEST_CASE(
    "what is more than a balance carries is no nearer than without a bench, and a small measure is filled again") {
    const auto off = [](const std::string& bench, const std::string& line) {
        test::Workspace workspace;
        workspace.add("trial.scruple",
                      bench + "recipe Trial\n    water   500 ml\n    " + line + "\n    water to make   1 l\n");
        workspace.check();
        const auto& model = workspace.model();
        const auto contents = check::contents(model, test::section_called(model, "trial"), 0);
        REQUIRE_MESSAGE(contents.size() == 1, test::described(workspace));
        return contents.front().give_or_take;
    };
    const std::string scales = "bench Sink\n    balance   0.001 g up to 10 g\n";
    CHECK(off(scales, "metol   20 g") == off("", "metol   20 g"));
    CHECK(off(scales, "metol   10 g") < off("", "metol   10 g"));
    const std::string glass = "bench Sink\n    graduate   10 ml by 0.1 ml\n";
    CHECK(off(glass, "acetic acid (glacial)   20 ml") < off("", "acetic acid (glacial)   20 ml"));
    CHECK(off(glass, "acetic acid (glacial)   20 ml") >
          off("bench Sink\n    graduate   50 ml by 0.1 ml\n", "acetic acid (glacial)   20 ml"));
    CHECK(off(glass, "acetic acid (glacial)   90 ml") == off("", "acetic acid (glacial)   90 ml"));
}
