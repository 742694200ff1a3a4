// SPDX-License-Identifier: MIT
// Single columns with errors planted in them (invented): what is usual tells; what is usual is common practice, no
// source.
#include "page_workspace.hpp"

using scruple::test::PrintedPage;
using scruple::test::to_figures;
using Verdict = scruple::printed::Verdict;

namespace {

/// A sound page, to which a line is added in which something is wrong.
void tells(const std::string& line, const std::string& chemical, const std::string& slip) {
    const PrintedPage page(R"(
    is a       film developer
    | Metol                   2.5 g
    | Sodium sulphite, dry    75 g
    | Water to                1 litre
)" + std::string("    | ") +
                           line + "\n");
    CAPTURE(line);
    CHECK(page.line("metol").fault.empty());
    CHECK(page.line("sodium sulfite").fault.empty());
    CHECK(page.line(chemical).slip.find(slip) != std::string::npos);
}

}  // namespace

TEST_CASE("a figure far from what is usual is told, with what would make it usual") {
    tells("Hydroquinone  50 g", "hydroquinone", "the point has slipped, or a nought is too much: it would be 5 g/l");
    tells("Hydroquinone  0.05 g", "hydroquinone", "the point has slipped by two places");
    tells("Borax (cryst.)  0.2 g", "borax", "a figure has dropped out: it would be 2 g/l");
    tells("Potassium bromide  15 g", "potassium bromide", "grams are printed where grains belong");
    tells("Potassium bromide  1 ml", "potassium bromide", "millilitres are printed where grams belong");
    tells("Sodium carbonate, dry  500 g", "sodium carbonate", "it would be 50 g/l");
    tells("Potassium bromide  2 mg", "potassium bromide", "milligrams are printed where grams belong");
}

TEST_CASE("old units confused in a single column") {
    const auto slip = [](const std::string& line, const std::string& chemical) {
        const PrintedPage page(
            "    is a   film developer\n    | Metol   50 grs\n    | Sodium sulphite, dry   1½ oz\n    | " + line +
            "\n    | Water to   20 oz\n");
        CHECK(page.line("metol").fault.empty());
        return page.line(chemical).slip;
    };
    CHECK(slip("Hydroquinone  1 oz", "hydroquinone").find("ounces are printed where drachms belong") !=
          std::string::npos);
    CHECK(slip("Potassium carbonate  2 grs", "potassium carbonate").find("grains are printed where drachms belong") !=
          std::string::npos);
    CHECK(slip("Potassium bromide  ½ oz", "potassium bromide").find("ounces are printed where drachms belong") !=
          std::string::npos);
}

TEST_CASE("which of two columns is the unusual one") {
    const PrintedPage page(R"(
    is a       fixer
    | Hypo                   5 oz    25 g
    | Potass. metabisulphite ½ oz    25 g
    | Water to               20 oz   1000 c.c.
)");
    const auto& line = page.line("sodium thiosulfate");
    CHECK(line.slip.starts_with("the point has slipped"));
    CHECK(std::ranges::any_of(line.evidence, [](const std::string& it) {
        return it.starts_with("column 1 is within what fixers usually hold");
    }));
}

TEST_CASE("a column whose volume is wrong is weaker throughout") {
    // Amounts of a litre, under which two litres are printed.
    const PrintedPage page(R"(
    is a       paper developer
    book       a bench book, 1950, England
    | Metol                   60 grs  1.7 g
    | Hydroquinone            ½ oz    6.3 g
    | Sodium sulphite anhyd   2 oz    25 g
    | Sodium carbonate anhyd  2½ oz   31 g
    | Water to                80 oz   2000 c.c.
)");
    CHECK(std::ranges::any_of(page.settled.evidence, [](const std::string& it) {
        return it.find("weaker than the others throughout, as if it made 1000 ml and not 2000 ml") != std::string::npos;
    }));
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("a stock solution is no row of slips") {
    const PrintedPage told(R"(
    is a       paper developer
    | Metol                   6 g
    | Sodium sulphite, dry    100 g
    | Hydroquinone            25 g
    | Sodium carbonate, dry   150 g
    | Potassium bromide       6 g
    | Water to                1 litre
    | Dilute with 3 parts of water
)");
    for (const auto& line : told.settled.lines) CHECK(line.fault.empty());
    const PrintedPage found(R"(
    is a       paper developer
    | Metol                   12 g
    | Sodium sulphite, dry    200 g
    | Hydroquinone            50 g
    | Sodium carbonate, dry   250 g
    | Water to                1 litre
)");
    for (const auto& line : found.settled.lines) CHECK(line.fault.empty());
    CHECK(std::ranges::any_of(found.settled.evidence, [](const std::string& it) {
        return it.find("times as strong as in use") != std::string::npos;
    }));
}

TEST_CASE("what is usual tells grains from grams, and the forms of a salt") {
    const PrintedPage grams(R"(
    is a       paper developer
    | Metol                   3 grs
    | Hydroquinone            12 grs
    | Sodium sulphite, dry    45 g
    | Water                   1 litre
)");
    CHECK(grams.taken("what gr means") == "gr gram");
    CHECK(grams.question("what gr means").verdict == Verdict::clear);
    CHECK(!grams.question("what gr means").options[1].weights.empty());
    const PrintedPage crystals(
        "    is a   film developer\n    | Sodium carbonate  200 g\n    | Metol  3 g\n    | Water  1 l\n");
    CHECK(crystals.line("sodium carbonate").form == "decahydrate");
}

TEST_CASE("the pH counts: a stop bath is no alkali") {
    // Without its acid, `carbonate` for `citric acid`: the pH says that something is wrong.
    const PrintedPage page("    is a   stop bath\n    | Sodium carbonate, dry   20 g\n    | Water  1 l\n");
    REQUIRE(page.solution().ph);
    // Sodium carbonate, 0.19 mol/l: pH 11.5 (tests/reference/phreeqc_pH.csv has 11.3 to 11.6 near it)
    CHECK(*page.solution().ph == doctest::Approx(11.5).epsilon(0.02));
    CHECK(std::ranges::any_of(page.settled.evidence, [](const std::string& it) {
        return it.find("something on the page may not be what was meant") != std::string::npos;
    }));
}

TEST_CASE("whose fluid ounce: round measures, spelling and the book, together") {
    const std::string american = "    | Borax  ½ oz\n    | Water to  32 oz\n    | Stir with a liter rod of the store\n";
    CHECK(PrintedPage(american).taken("whose fluid ounce") == "fl oz us");
    CHECK(PrintedPage(american).question("whose fluid ounce").verdict == Verdict::likely);
    const PrintedPage round("    | Borax  ½ oz\n    | Water to  20 oz\n");
    CHECK(round.taken("whose fluid ounce") == "fl oz imperial");
    CHECK(round.question("whose fluid ounce").verdict == Verdict::open);
    CHECK(round.question("whose fluid ounce").look_for.find("20 make an imperial pint") != std::string::npos);
}

TEST_CASE("forms that nothing tells apart are asked for, with what would tell") {
    for (const char* name : {"Sodium sulphite", "Sodium carbonate", "Sodium tetraborate"}) {
        const PrintedPage page("    is a   film developer\n    | Metol  3 g\n    | " + std::string(name) +
                               "  10 g\n    | Water  1 l\n");
        const auto& line = page.settled.lines.back();
        const auto& question = page.question("which " + line.name);
        CHECK(question.verdict == Verdict::open);
        CHECK(question.look_for.find(line.name) != std::string::npos);
        CHECK(!question.settle_with.empty());
    }
}

TEST_CASE("dangers by chemical, by word, and never twice; first aid is left out") {
    const PrintedPage page(R"(
    | Bichromate of potash   20 grs
    | Sugar of lead          30 grs
    | Cyanide of potassium   10 grs
    | Nitrate of uranium     10 grs
    | Water                  10 oz
    | Warm it over a spirit lamp, and do not breathe the fumes.
    | In case of poisoning give white of egg.
)");
    std::vector<std::string> about;
    for (const auto& warning : page.settled.warnings) {
        about.push_back(warning.about);
        CHECK(warning.text.find("safety data sheet") != std::string::npos);
    }
    const std::vector<std::string> expected{
        "potassium dichromate", "potassium cyanide", "uranyl nitrate", "lead", "uranium", "open flame", "fumes"};
    for (const auto& one : expected) CHECK(std::ranges::count(about, one) == 1);
    CHECK(std::ranges::count(about, "cyanide") == 0);
    for (const auto& line : page.settled.not_read) CHECK(line.find("egg") == std::string::npos);
    const PrintedPage borax(
        "    | Borax  10 g\n    | Hydroquinone 5 g\n    | This may lead to stains.\n    | Water 1 l\n");
    CHECK(borax.settled.warnings.empty());
}
