// SPDX-License-Identifier: MIT
// What dissolves, against the handbook: in 100 g of water and not in 100 ml of solution, in the form that is weighed,
// and between the temperatures that the handbook prints.
#include <algorithm>
#include <cmath>

#include "figures.hpp"
#include "scruple/check/solubility.hpp"
#include "scruple/syntax/normal.hpp"

using namespace scruple;
using check::Id;
using diagnostics::Kind;
using test::reference_rows;

namespace {

struct Library {
    test::Workspace workspace;
    Library() { workspace.check(); }
    [[nodiscard]] const check::Model& model() const { return workspace.model(); }
    [[nodiscard]] Id id(const std::string& name) const { return model().chemical_names.at(name).first; }
    /// mol/kg of water
    [[nodiscard]] std::optional<double> at(const std::string& name, double celsius) const {
        return check::saturated_mol_per_kg(model(), id(name), model().water, celsius);
    }
    /// g of a form in 100 g of water, with what the form's crystals bring on top of it
    [[nodiscard]] double grams(const std::string& name, const std::string& form, double celsius) const {
        const auto& as = test::form_called(model(), name, form);
        return check::grams_dissolved(as, at(name, celsius).value(), 100).value();
    }
};

/// The library's name and form of a row: `EDTA disodium dihydrate`, or the form without water.
std::pair<std::string, std::string> named(const std::string& compound) {
    const std::string tail = " dihydrate";
    if (compound.ends_with(tail)) return {"edta disodium", "dihydrate"};
    return {syntax::normal_name(compound), ""};
}

std::string hydrate_of(const std::string& formula) {
    const auto water = formula.substr(formula.find("·") + std::string("·").size());
    if (water == "7H2O") return "heptahydrate";
    if (water == "10H2O") return "decahydrate";
    if (water == "12H2O") return "dodecahydrate";
    return water == "5H2O" ? "pentahydrate" : "trihydrate";
}

std::size_t count(const test::Workspace& workspace, Kind kind) {
    return static_cast<std::size_t>(std::ranges::count(workspace.diagnostics(), kind, &diagnostics::Diagnostic::kind));
}

std::size_t warned(const std::string& lines, Kind kind) {
    test::Workspace workspace;
    workspace.add("trial.scruple", "recipe Trial\n" + lines);
    workspace.check();
    return count(workspace, kind);
}

}  // namespace

TEST_CASE("at the handbook's temperatures, exactly the handbook's figures") {
    const Library library;
    std::size_t compared = 0;
    for (const auto& row : reference_rows("solubility_water.csv")) {
        CAPTURE(row.at("compound"));
        const auto [name, form] = named(row.at("compound"));
        for (const int celsius : {20, 25}) {
            const auto& printed = row.at("solubility_" + std::to_string(celsius) + "C_g_per_100g_water");
            if (printed.empty()) continue;
            CHECK(library.grams(name, form, celsius) == doctest::Approx(std::stod(printed)).epsilon(1e-9));
            ++compared;
        }
    }
    CHECK(compared >= 45);
}

TEST_CASE("a hydrate brings water: more of it dissolves than its share of salt tells") {
    // 71.9 g of Na2SO3·7H2O (252.15 g/mol) are 35.94 g of Na2SO3 (126.04) and 35.96 g of water. In 100 g of water there
    // are then 136 g of it, and 35.94/135.96 is 26.4 g in 100 g. The salt's share alone would be 52.8 g.
    const Library library;
    CHECK(library.grams("sodium sulfite", "heptahydrate", 20) == doctest::Approx(71.9).epsilon(0.004));
    CHECK(26.4 * 252.15 / 126.04 == doctest::Approx(52.8).epsilon(0.001));
    std::size_t compared = 0;
    for (const auto& row : reference_rows("solubility_water.csv")) {
        if (row.at("hydrate").empty()) continue;
        CAPTURE(row.at("hydrate"));
        const auto form = hydrate_of(row.at("hydrate"));
        const double printed = std::stod(row.at("hydrate_solubility_20C_g_per_100g_water"));
        // The anhydrous figures have three digits.
        CHECK(library.grams(row.at("compound"), form, 20) == doctest::Approx(printed).epsilon(0.004));
        const auto& as = test::form_called(library.model(), row.at("compound"), form);
        CHECK(check::water_to_dissolve(as, library.at(row.at("compound"), 20).value(), printed) ==
              doctest::Approx(100).epsilon(0.004));
        ++compared;
    }
    CHECK(compared == 5);
}

TEST_CASE("what was recalled says so, and what was read has its source") {
    const Library library;
    for (const auto& row : reference_rows("solubility_water.csv")) {
        CAPTURE(row.at("compound"));
        for (const auto& line : library.model().chemicals[library.id(named(row.at("compound")).first)].solubilities) {
            const auto celsius = line.at->low.to_double();
            const auto column = "solubility_" + std::to_string(std::lround(celsius)) + "C_g_per_100g_water";
            const auto printed = row.find(column);
            const bool read = row.at("from_memory") == "no" && printed != row.end() && !printed->second.empty();
            CHECK((line.source.find("recalled") == std::string_view::npos) == read);
            if (read) CHECK(line.source.find("CRC Handbook, 91st ed.") != std::string_view::npos);
        }
    }
    for (const auto& chemical : library.model().chemicals)
        for (const auto& line : chemical.solubilities) CHECK_FALSE(line.source.empty());
}

TEST_CASE("between two temperatures, the logarithm is linear in 1/T") {
    const Library library;
    // Boric acid: 5.01 g at 20 °C and 5.80 g at 25 °C. At 22.5 °C 1/T has gone 0.50423 of the way from 1/293.15 to
    // 1/298.15, and 5.01 × (5.80/5.01)^0.50423 = 5.3939.
    CHECK(library.grams("boric acid", "", 22.5) == doctest::Approx(5.3939).epsilon(2e-5));
    for (const std::string name : {"sodium carbonate", "borax", "calcium hydroxide", "hydroquinone"}) {
        CAPTURE(name);
        for (double celsius = 5; celsius < 40; celsius += 0.5) {
            const double below = library.at(name, celsius).value(), above = library.at(name, celsius + 0.5).value();
            CHECK((name == "calcium hydroxide") == (above < below));
        }
    }
}

TEST_CASE("the law leaves a handbook's figure out and finds it") {
    // With the lines of 10 and 30 °C alone, 20 °C comes out near what the handbook prints for it.
    const Library library;
    std::size_t compared = 0;
    for (const auto& row : reference_rows("solubility_water.csv")) {
        if (row.at("from_memory") == "yes" || row.at("solubility_20C_g_per_100g_water").empty()) continue;
        // Whose crystals are others above 20 °C or close to it: their curves have a bend.
        if (row.at("compound") == "sodium carbonate" || row.at("compound") == "disodium phosphate") continue;
        CAPTURE(row.at("compound"));
        const auto name = named(row.at("compound")).first;
        auto model = library.model();
        auto& lines = model.chemicals[library.id(name)].solubilities;
        std::erase_if(lines, [](const auto& line) { return line.at->low != 10 && line.at->low != 30; });
        REQUIRE(lines.size() == 2);
        const auto found = check::saturated_mol_per_kg(model, library.id(name), model.water, 20);
        CHECK(found.value() == doctest::Approx(library.at(name, 20).value()).epsilon(0.035));
        ++compared;
    }
    CHECK(compared >= 15);
}

TEST_CASE("outside of what is known nothing is said") {
    const Library library;
    CHECK(library.at("boric acid", 62.5).has_value());
    CHECK_FALSE(library.at("boric acid", 63).has_value());
    CHECK(library.at("metol", 18).has_value());
    CHECK_FALSE(library.at("metol", 17).has_value());
    CHECK_FALSE(library.at("metol", 45).has_value());
    CHECK_FALSE(
        check::saturated_mol_per_kg(library.model(), library.id("metol"), library.id("glycerol"), 20).has_value());
    CHECK(check::celsius_to_dissolve(library.model(), library.id("borax"), library.model().water,
                                     library.at("borax", 37).value(), 20) == 37);
    CHECK_FALSE(check::celsius_to_dissolve(library.model(), library.id("borax"), library.model().water, 9, 20));
    CHECK(warned("water 100 ml at 95 C\nborax (decahydrate) 100 g\nwater to make 5 l\n", Kind::too_little_water) == 0);
}

TEST_CASE("crystals that bring water enough dissolve in any amount") {
    const Library library;
    const auto& crystals = test::form_called(library.model(), "sodium carbonate", "decahydrate");
    // At 30 °C 40.3 g of the dry salt want 100 g of water; the decahydrate has 58.8 g of it for each 100 g.
    CHECK_FALSE(check::grams_dissolved(crystals, library.at("sodium carbonate", 40).value(), 0).value_or(0) > 0);
    CHECK(check::water_to_dissolve(crystals, 60, 1) == 0);
    CHECK_FALSE(check::grams_dissolved(crystals, 60, 100).has_value());
}

TEST_CASE("a litre of brine holds less than 359 g, which is what a kilogram of water dissolves") {
    // Saturated brine at 20 °C is 26.4 % w/w and 1.20 g/ml (textbooks, recalled): 317 g/l.
    test::Workspace workspace;
    workspace.add("trial.scruple", "recipe Trial\nsodium chloride (saturated at 20 C) 1 l\n");
    workspace.check();
    const auto held = check::contents(workspace.model(), test::section_called(workspace.model(), "trial"), 0);
    CHECK(held.at(0).g_per_l == doctest::Approx(317).epsilon(0.03));
    const std::string lines = "water 800 ml\nsodium chloride 359 g\nwater to make 1 l\n";
    CHECK(warned(lines, Kind::will_not_all_dissolve) == 1);
    CHECK(warned("water 800 ml\nsodium chloride 280 g\nwater to make 1 l\n", Kind::will_not_all_dissolve) == 0);
    CHECK(warned("water 1 kg\nsodium chloride 359 g\n", Kind::will_not_all_dissolve) == 0);
}

TEST_CASE("a saturated solution follows the temperature, too") {
    const auto strength = [](const std::string& celsius) {
        test::Workspace workspace;
        workspace.add("trial.scruple", "recipe Trial\nboric acid (saturated at " + celsius + " C) 1 l\n");
        workspace.check();
        return check::contents(workspace.model(), test::section_called(workspace.model(), "trial"), 0).at(0).g_per_l;
    };
    const double at_20 = strength("20"), between = strength("22.5"), at_25 = strength("25");
    CHECK(between == doctest::Approx(std::sqrt(at_20 * at_25)).epsilon(0.002));
    CHECK(strength("-2") == doctest::Approx(strength("0")));
}
