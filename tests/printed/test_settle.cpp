// SPDX-License-Identifier: MIT
// Pages with printed errors (invented), readings by hand, old practice; the search against trying everything.
#include "../../src/printed/notation.hpp"
#include "../../src/printed/search.hpp"
#include "page_workspace.hpp"

using namespace scruple;
using scruple::test::PrintedPage;
using scruple::test::to_figures;
using Verdict = scruple::printed::Verdict;

namespace {

const std::string sound = R"(
    book   a handbook, 1930, Great Britain
    | Metol                   50 grs   5.7 g
    | Hydroquinone            ½ oz     25 g
    | Potassium bromide       20 grs   2.3 g
    | Water to                20 oz    1 litre
)";

std::string slip_of(const std::string& line, const std::string& chemical) {
    const PrintedPage page(sound + line);
    CHECK(!page.line(chemical).fault.empty());
    CHECK(page.line("metol").fault.empty());
    CHECK(page.line("hydroquinone").fault.empty());
    return page.line(chemical).slip;
}

}  // namespace

TEST_CASE("lines that no reading explains are told, with the likely slip") {
    CHECK(slip_of("    | Sodium sulphite, dry  1 oz  5.0 g\n", "sodium sulfite").starts_with("the point has slipped"));
    CHECK(slip_of("    | Sodium sulphite, dry  3 oz  15 g\n", "sodium sulfite").starts_with("the point has slipped"));
    CHECK(slip_of("    | Sodium sulphite, dry  1½ oz  57 g\n", "sodium sulfite")
              .starts_with("two figures have changed places"));
    CHECK(slip_of("    | Borax  120 grs  210 g\n", "borax").starts_with("grains are printed"));
    CHECK(slip_of("    | Citric acid  60 grs  6.9 ml\n", "citric acid").starts_with("one column is a weight"));
    CHECK(slip_of("    | Sodium sulphite, dry  2½ oz  71 g\n", "sodium sulfite") ==
          "the amount was converted and not scaled to the volume of its column");
    CHECK(slip_of("    | Sodium carbonate, dry  1 oz  18.5 g\n", "sodium carbonate").find("decahydrate") !=
          std::string::npos);
}

TEST_CASE("what is rounded as books round is no slip") {
    for (const char* line : {"    | Borax  90 grs  10 g\n", "    | Citric acid  60 grs  7 g\n",
                             "    | Sodium sulphite, dry  2 oz  100 g\n"}) {
        const PrintedPage page(sound + line);
        for (const auto& it : page.settled.lines) CHECK(it.fault.empty());
    }
}

TEST_CASE("a reading by hand is kept to, with its reason") {
    const std::string page = "    | Hypo   2 oz\n    | Sodium carbonate  1 oz\n    | Water to   10 oz\n";
    const PrintedPage open(page);
    CHECK(open.question("whose fluid ounce").verdict == Verdict::open);
    CHECK(open.question("which sodium carbonate").verdict == Verdict::open);
    const PrintedPage settled(page + R"(    reading fl oz us because "the book is of this town"
    reading oz apothecaries because "its table of weights"
    reading sodium carbonate (monohydrate) because "the shop sold no other"
)");
    CHECK(settled.solution().makes == "10 fl oz us");
    CHECK(settled.line("sodium thiosulfate").amount == "2 oz ap");
    CHECK(settled.line("sodium carbonate").form == "monohydrate");
    CHECK(settled.question("whose fluid ounce").verdict == Verdict::by_hand);
    CHECK(settled.question("whose fluid ounce").because == "the book is of this town");
    CHECK(settled.question("which sodium carbonate").verdict == Verdict::by_hand);
    // `units "2 apounce / 10 floz" g/l`
    CHECK(settled.per_litre("sodium thiosulfate") == to_figures(210.3));
}

TEST_CASE("a reading line that settles nothing says what there is") {
    const PrintedPage page("    | Hypo   2 oz\n    reading oz of the moon because \"so\"\n");
    REQUIRE(page.settled.faults.size() == 1);
    CHECK(page.settled.faults[0].find("fl oz imperial") != std::string::npos);
}

TEST_CASE("old practice is warned of, and first aid is left out") {
    const PrintedPage page(R"(
    | Mercuric chloride           20 grs
    | Water                       10 oz
    | Taste the wash water for hypo.
    | Antidote: white of egg.
)");
    REQUIRE(page.settled.warnings.size() == 2);
    CHECK(page.settled.warnings[0].about == "mercury(II) chloride");
    CHECK(page.settled.warnings[1].about == "tasting");
    for (const auto& warning : page.settled.warnings)
        CHECK(warning.text.find("safety data sheet") != std::string::npos);
    for (const auto& line : page.settled.not_read) CHECK(line.find("Antidote") == std::string::npos);
}

TEST_CASE("figures and units as books print them") {
    const auto value = [](std::string_view text) { return printed::figure_at(text)->value; };
    CHECK(value("1½ oz") == quantity::Exact(3, 2));
    CHECK(value("1 1/2 oz") == quantity::Exact(3, 2));
    CHECK(value("1-1/2 oz") == quantity::Exact(3, 2));
    CHECK(value("0,5 g") == quantity::Exact(1, 2));
    CHECK(value("5.70") == quantity::Exact(57, 10));
    CHECK(value("2 to 3 grs") == quantity::Exact(5, 2));
    CHECK(!printed::figure_at("metol"));
    const auto unit = [](std::string_view text) { return printed::unit_at(text).unit; };
    using printed::UnitWord;
    CHECK(unit("ozs.") == UnitWord::ounce);
    CHECK(unit("fl. oz.") == UnitWord::fluid_ounce);
    CHECK(unit("c.c.") == UnitWord::millilitre);
    CHECK(unit("C.C.") == UnitWord::millilitre);
    CHECK(unit("grs.") == UnitWord::grain_or_gram);
    CHECK(unit("grammes") == UnitWord::gram);
    CHECK(unit("drs") == UnitWord::drachm);
    CHECK(unit("minims") == UnitWord::minim);
    CHECK(unit("golden") == UnitWord::none);
}

TEST_CASE("1:9 may be 1+9 or one part in nine, 11 % stronger") {
    const PrintedPage page("    | Borax   3 g\n    | Water ad 1 pint\n    | Use 1 : 9\n");
    const auto& question = page.question("what 1 : 9 means");
    CHECK(question.verdict == Verdict::open);
    REQUIRE(question.options.size() == 2);
    CHECK(question.options[0].words == "1+9");
    CHECK(question.options[1].words == "1+8");
    CHECK(question.options[1].changes.front() == "one part in 9, 11 % stronger");
    CHECK(page.settled.lines.size() == 1);
    CHECK(page.solution().makes == "1 pint uk");
    CHECK(!page.solution().added_up);
}

TEST_CASE("what is not known is told, and parts are worked out") {
    const PrintedPage page(
        "    | Moonshine   3 g\n    | Hypo   20 parts\n    | Carbonate of soda, washing   2 oz\n    | Water   1 "
        "pint\n");
    CHECK(page.line("Moonshine").evidence.front() == "the library knows no chemical of that name");
    CHECK(page.line("sodium thiosulfate").amount == "20 g");
    CHECK(page.line("sodium carbonate").amount == "2 oz av");
}

TEST_CASE("pieces of one column add up, columns stay apart") {
    const PrintedPage page("    | Borax   1 oz 60 grs   32 g\n    | Water   1 litre   1 litre\n");
    // One ounce and 60 grains: 28.350 + 3.888 g, or with the apothecaries' ounce 34.99.
    CHECK(page.per_litre("borax") == to_figures(32.24));
}

TEST_CASE("the search finds what trying every combination finds") {
    // Costs by a rule without order, on three shared readings and four lines of up to three ways.
    std::vector<printed::Line> lines(4);
    std::vector<printed::Known> known(4);
    for (std::size_t i = 0; i < known.size(); ++i) {
        known[i].line = &lines[i];
        for (check::Id way = 0; way <= i % 3; ++way)
            known[i].ways.push_back({.other_ounce = way == 1,
                                     .form = way,
                                     .weights = {printed::Evidence::habit, static_cast<double>((7 * way + i) % 4)}});
    }
    std::vector<printed::Shared> shared(3);
    for (std::size_t s = 0; s < shared.size(); ++s) {
        shared[s].stronger = static_cast<double>(s);
        shared[s].weights = {printed::Evidence::habit, static_cast<double>((5 * s) % 3)};
    }
    const auto cost = [](std::size_t line, const printed::Way& way, const printed::Shared& one) {
        return static_cast<double>((31 * line + 17 * way.form + 13 * static_cast<std::size_t>(one.stronger)) % 11);
    };
    double least = 1e9;
    for (const auto& one : shared)
        for (const auto& a : known[0].ways)
            for (const auto& b : known[1].ways)
                for (const auto& c : known[2].ways)
                    for (const auto& d : known[3].ways)
                        least = std::min(least, one.weights.sum() + a.weights.sum() + b.weights.sum() +
                                                    c.weights.sum() + d.weights.sum() + cost(0, a, one) +
                                                    cost(1, b, one) + cost(2, c, one) + cost(3, d, one));
    const printed::Search search(known, shared, cost);
    CHECK(search.best().cost == least);
    CHECK(search.best_of([](const printed::Shared&) { return true; })->cost == least);
    for (std::size_t i = 0; i < known.size(); ++i)
        CHECK(search.best_with(i, [](const printed::Way&) { return true; })->cost == least);
}
