// SPDX-License-Identifier: MIT
// Pages of many forms, invented unless a source stands beside them. What they come to was worked out with GNU
// units 2.22
// (`units "145 grain + 3 oz" g`, `units "1 oz / 20 brfloz" g/l`) and by hand.
#include "page_workspace.hpp"

using scruple::test::PrintedPage;
using scruple::test::to_figures;
using Verdict = scruple::printed::Verdict;

TEST_CASE("leaders of every kind lead to the figures") {
    const PrintedPage page(R"(
    is a       film developer
    | Metol ................ 2 g
    | Sodium sulphite, anhydrous .... 100 g
    | Hydroquinone . . . . . 5 g
    | Borax ________ 2 g
    | Water to make ....... 1 litre
)");
    CHECK(page.per_litre("metol") == to_figures(2));
    CHECK(page.per_litre("sodium sulfite") == to_figures(100));
    CHECK(page.per_litre("hydroquinone") == to_figures(5));
    CHECK(page.per_litre("borax") == to_figures(2));
    // pH of this mixture with the crystals of borax: 8.4 to 8.9 in handbooks of photography (recalled).
    REQUIRE(page.solution().ph);
    CHECK(*page.solution().ph > 8.3);
    CHECK(*page.solution().ph < 9.0);
}

TEST_CASE("headings over columns: avoirdupois beside metric") {
    // A maker's table of the borax developer in two systems, figures from memory.
    const PrintedPage page(R"(
    is a       film developer
    |                 Avoirdupois    Metric
    | Metol           30 grains      2 grams
    | Sodium Sulfite, desiccated     3 ozs. 145 grains    100 grams
    | Hydroquinone    75 grains      5 grams
    | Borax           30 grains      2 grams
    | Water to make   32 ozs.        1 liter
)");
    CHECK(page.taken("whose fluid ounce in column 1") == "fl oz us");
    CHECK(page.question("whose ounce for what is weighed").verdict == Verdict::clear);
    CHECK(page.per_litre("metol") == to_figures(2.054));
    CHECK(page.per_litre("sodium sulfite") == to_figures(99.80));
    CHECK(page.per_litre("hydroquinone") == to_figures(5.135));
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("headings over columns: three systems") {
    const PrintedPage page(R"(
    is a       paper developer
    | | British | U.S. | Metric
    | Metol | 13 grains | 11 grains | 1.5 g
    | Sod. sulphite (cryst) | 1 oz | 365 grains | 50 g
    | Hydroquinone | 55 grains | 46 grains | 6.3 g
    | Pot. bromide | 8 grains | 7 grains | 0.9 g
    | Water up to | 20 oz | 16 oz | 1000 c.c.
)");
    CHECK(page.taken("whose fluid ounce in column 1") == "fl oz imperial");
    CHECK(page.taken("whose fluid ounce in column 2") == "fl oz us");
    CHECK(page.per_litre("metol") == to_figures(1.482));
    CHECK(page.per_litre("sodium sulfite") == to_figures(49.89));
    CHECK(page.line("sodium sulfite").form == "heptahydrate");
}

TEST_CASE("a heading of one column: grains") {
    const PrintedPage page("    | Grains\n    | Metol   20\n    | Potassium bromide   5\n    | Water   10 oz (imp.)\n");
    CHECK(page.line("metol").amount == "20 grains");
    CHECK(page.per_litre("metol") == to_figures(4.561));
    CHECK(page.solution().makes == "10 fl oz uk");
    CHECK(!page.asks("whose fluid ounce"));
}

TEST_CASE("whose measure a unit is, said beside it") {
    const PrintedPage us("    | Borax   ½ oz avoir.\n    | Water   1 U.S. pint\n");
    CHECK(us.solution().makes == "1 pint us");
    CHECK(us.per_litre("borax") == to_figures(29.96));
    const PrintedPage imperial("    | Borax   ½ oz. (troy)\n    | Water   one imperial pint\n");
    CHECK(imperial.solution().makes == "1 pint uk");
    // Half an ounce of 480 grains in 568.26 ml
    CHECK(imperial.per_litre("borax") == to_figures(27.37));
}

TEST_CASE("two solutions and how they are mixed for use") {
    const PrintedPage page(R"(
    is a       film developer
    book       a handbook, 1910, Great Britain
    | Stock solution A
    | Pyro   1 oz
    | Potass. metabisulphite   60 grs
    | Water to 20 oz
    | B
    | Soda carbonate cryst  2 oz
    | Soda sulphite cryst   2 oz
    | Water to 20 oz
    | For use take 1 part A, 1 part B, 2 parts water.
)");
    REQUIRE(page.settled.solutions.size() == 2);
    CHECK(page.solution(0).label == "A");
    CHECK(page.solution(1).label == "B");
    CHECK(page.per_litre("pyrogallol") == to_figures(49.89));
    CHECK(page.line("sodium carbonate").solution == 1);
    REQUIRE(page.settled.for_use.size() == 1);
    const auto& use = page.settled.for_use[0];
    REQUIRE(use.shares.size() == 2);
    CHECK(use.water == "2");
    // A quarter of 49.89, 6.842 and 99.78 g/l
    CHECK(use.holds[0].per_litre == to_figures(12.47));
    CHECK(use.holds[1].per_litre == to_figures(1.711));
    CHECK(use.holds[2].per_litre == to_figures(24.94));
    for (const auto& line : page.settled.lines) CHECK(line.fault.empty());
}

TEST_CASE("what is mixed for use, in other words") {
    const auto use = [](const std::string& words) {
        const PrintedPage page(
            "    | Solution A\n    | Borax 10 g\n    | Water 1 litre\n    | Solution B\n    | Hypo 9 "
            "g\n    | Water 1 litre\n    | " +
            words + "\n");
        std::string all;
        for (const auto& it : page.settled.for_use) {
            for (const auto& share : it.shares) all += share.parts + page.solution(share.solution).label + " ";
            all += "water " + it.water + ";";
        }
        return all;
    };
    CHECK(use("Equal parts of A and B") == "1A 1B water ;");
    CHECK(use("To use, mix 1 oz A with 8 oz B.") == "1A 8B water ;");
    CHECK(use("A 1 part, B 2 parts, and water 3 parts") == "1A 2B water 3;");
    CHECK(use("Take one part A, one part B and two parts of water") == "1A 1B water 2;");
    // An imperial pint has 20 fluid ounces, a US one 16 (NIST Handbook 44, appendix C).
    CHECK(use("Take 1 oz A and 1 pint B\n    book A Primer, London, 1903") == "1A 20B water ;");
    CHECK(use("1 oz A and 1 oz B to 1 pint of water\n    book A Primer, Boston, 1903") == "1A 1B water 16;");
    // A part without a name is of the solution over it, or of what was mixed before.
    CHECK(use("Use 1 part with 9 parts of water") == "1B water 9;");
    CHECK(use("Mix equal parts of A and B.\n    | Dilute with 3 parts of water.") == "0.5A 0.5B water 3;");
    // Volumes beside parts, and names that are none of the page, are left as they stand.
    CHECK(use("Take 1 oz A and 1 part B") == "");
    CHECK(use("Take 1 part A and 2 parts vinegar") == "");
    const PrintedPage stock("    | Metol 10 g\n    | Water to 1 l\n    | Dilute with 3 parts of water.\n");
    REQUIRE(stock.settled.for_use.size() == 1);
    CHECK(stock.settled.for_use[0].water == "3");
    CHECK(stock.settled.for_use[0].holds.front().per_litre == to_figures(2.5));
    const PrintedPage sum("    | Metol 10 g\n    | Water to 1 l\n    | For use dilute 1+4.\n");
    REQUIRE(sum.settled.for_use.size() == 1);
    CHECK(sum.settled.for_use[0].holds.front().per_litre == to_figures(2));
    CHECK(!sum.asks("what 1 : 4 means"));
    const PrintedPage working(
        "    | Stock solution\n    | Metol 10 g\n    | Water to 1 l\n    | Working solution\n    | "
        "Stock solution 1 part\n    | Water 4 parts\n");
    REQUIRE(working.settled.for_use.size() == 1);
    CHECK(working.settled.for_use[0].holds.front().per_litre == to_figures(2));
}

TEST_CASE("parts, drops, saturated solutions") {
    const PrintedPage parts(R"(
    is a       film developer
    | Glycin         1 part
    | Sodium sulphite, dry   2½ parts
    | Potassium carbonate    5 parts
    | Water          100 parts
)");
    CHECK(parts.per_litre("glycin") == to_figures(10));
    CHECK(parts.per_litre("sodium sulfite") == to_figures(25));
    CHECK(parts.line("potassium carbonate").amount == "5 g");
    const PrintedPage bare("    is a   fixer\n    | Hypo 250\n    | Potass metabisulphite 20\n    | Water 1000\n");
    CHECK(bare.per_litre("sodium thiosulfate") == to_figures(250));
    const PrintedPage drops("    | Ammonia   10 drops\n    | Water to   500 c.c.\n");
    // 20 to the ml: common practice, no source
    CHECK(drops.per_litre("ammonia") == to_figures(1));
    const PrintedPage saturated("    | Saturated solution of borax   100 ml\n    | Water to 1 l\n");
    // CRC Handbook (recalled): 2.5 g of the dry salt in 100 g of water at 20 °C, about 24.8 g in a litre
    CHECK(saturated.line("borax").strength == "saturated at 20 C");
    CHECK(saturated.per_litre("borax") == to_figures(100));
    const auto& borax = saturated.model().chemicals[saturated.line("borax").chemical];
    const double dry =
        *saturated.line("borax").holds / borax.forms[saturated.line("borax").form_id].molar_mass.to_double() * 201.22;
    CHECK(dry == doctest::Approx(2.48).epsilon(0.01));
}

TEST_CASE("percents: what each would hold, and what the page says of them") {
    const PrintedPage page("    | Acetic acid 28 %   100 ml\n    | Water to   1 l\n");
    const auto& question = page.question("which percent of acetic acid");
    CHECK(question.verdict == Verdict::open);
    REQUIRE(question.options.size() == 3);
    CHECK(question.options[0].words == "% v/v");
    // 28 ml of acid of 1.05 g/ml; 28 % of a litre of 1.04 g/ml is less, 280 g less still
    CHECK(*page.line("acetic acid").holds == doctest::Approx(29.4).epsilon(0.01));
    const PrintedPage said("    | Acetic acid (28 % by weight)   100 ml\n    | Water to   1 l\n");
    CHECK(said.line("acetic acid").strength == "28 % w/w");
    CHECK(!said.asks("which percent of acetic acid"));
    const PrintedPage salt("    | Potassium bromide, 10% solution   5 c.c.\n    | Water to 500 c.c.\n");
    CHECK(salt.line("potassium bromide").strength == "10 % w/v");
    CHECK(*salt.line("potassium bromide").holds == to_figures(1));
    const PrintedPage by_hand(
        "    | Acetic acid 28 %   100 ml\n    | Water to   1 l\n    reading % w/v because \"so\"\n");
    CHECK(by_hand.line("acetic acid").strength == "28 % w/v");
    CHECK(by_hand.question("which percent of acetic acid").verdict == Verdict::by_hand);
}

TEST_CASE("strengths that the trade has names for") {
    const PrintedPage ammonia("    | Liq. ammon. fort. .880   3 drachms   19 c.c.\n    | Water to 20 ozs 1000 c.c.\n");
    CHECK(ammonia.line("ammonia").strength == "35 % w/w");
    // 3 imperial fluid drachms are 10.655 ml
    CHECK(ammonia.per_litre("ammonia") == to_figures(18.75));
    const PrintedPage acetic("    | Acetic acid No. 8   3 oz\n    | Water to   32 oz\n");
    CHECK(acetic.line("acetic acid").strength == "28 % w/w");
    CHECK(acetic.line("acetic acid").evidence.front().find("common practice") != std::string::npos);
}

TEST_CASE("so much to the ounce, and so much in each pint") {
    const PrintedPage page(
        "    | Pyro   2 grs to the ounce\n    | Borax   40 grs. per pint\n    | Water   20 oz (imp.)\n");
    CHECK(page.per_litre("pyrogallol") == to_figures(4.561));
    CHECK(page.per_litre("borax") == to_figures(4.561));
}

TEST_CASE("alternatives are told, not added, and say which form is meant") {
    const PrintedPage page(R"(
    is a       film developer
    | Carbonate of soda   50 g or 135 g cryst.
    | Metol 3 g
    | Water to 1000 c.c.
)");
    // 50 g of the dry salt are 135 g of the crystals: 286.14 against 105.99 g/mol.
    CHECK(page.line("sodium carbonate").form == "anhydrous");
    CHECK(page.question("which sodium carbonate").verdict != Verdict::open);
    CHECK(page.settled.lines.size() == 2);
    REQUIRE(page.settled.not_read.size() == 1);
}

TEST_CASE("figures as they are set and scanned") {
    const PrintedPage page(R"(
    is a       film developer
    | 1. Metol   2,5 g
    | 2. Borax   5O g
    | (3) Sodium sulphite, dry  7 .5 g
    | 4) Potassium bromide  l0 g
    | 5. Water   1,000 c. c.
)");
    CHECK(page.solution().makes == "1000 ml");
    CHECK(page.per_litre("metol") == to_figures(2.5));
    CHECK(page.per_litre("borax") == to_figures(50));
    CHECK(page.per_litre("sodium sulfite") == to_figures(7.5));
    CHECK(page.per_litre("potassium bromide") == to_figures(10));
    CHECK(page.line("borax").evidence.front().find("scan") != std::string::npos);
    const PrintedPage thousands("    | Borax   1,250 g\n    | Water   10,000 c.c.\n");
    CHECK(thousands.per_litre("borax") == to_figures(125));
    const PrintedPage commas("    | Borax   1,250 g\n    | Metol   0,5 g\n    | Water   1000 c.c.\n");
    CHECK(commas.per_litre("borax") == to_figures(1.25));
    const PrintedPage words("    | Borax   one ounce\n    | Metol   half an ounce\n    | Water   2 U.S. quarts\n");
    CHECK(words.line("borax").amount == "1 oz av");
    CHECK(words.per_litre("metol") == to_figures(7.489));
    const PrintedPage range("    | Borax   10–12 g\n    | Water   1 litre\n");
    CHECK(range.per_litre("borax") == to_figures(11));
}

TEST_CASE("baths under titles are solutions of their own; words behind the last line are not") {
    const PrintedPage page(R"(
    is a       toner
    | Bleach
    | Pot. ferricyanide  1 oz
    | Water to  20 oz
    | Sulphide bath
    | Sodium sulphide   2 oz
    | Water  to 40 oz
    | Works quickly
)");
    REQUIRE(page.settled.solutions.size() == 2);
    CHECK(page.solution(0).label == "Bleach");
    CHECK(page.solution(1).label == "Sulphide bath");
    CHECK(page.solution(1).makes == "40 fl oz uk");
    CHECK(page.per_litre("sodium sulfide") == to_figures(49.89));
    REQUIRE(page.settled.not_read.size() == 1);
    CHECK(page.settled.not_read[0] == "Works quickly");
}

TEST_CASE("dilutions in words") {
    const auto water = [](const std::string& words) {
        const PrintedPage page("    | Borax 9 g\n    | Water to 1 l\n    | " + words + "\n");
        return page.settled.for_use.empty() ? "" : page.settled.for_use[0].water;
    };
    CHECK(water("Dilute 1 to 20") == "20");
    CHECK(water("Dilute one part with 9 parts of water") == "9");
    CHECK(water("Diluted 1 in 10") == "9");
    CHECK(water("Dilute 1+7") == "7");
}

TEST_CASE("a formula run on in one line") {
    const PrintedPage page(
        "    | Amidol, 50 grs.; sulphite of soda, 1 oz.; strong ammonia, 10 drops; water, 20 ozs.\n");
    CHECK(page.per_litre("amidol") == to_figures(5.702));
    CHECK(page.per_litre("sodium sulfite") == to_figures(49.89));
    CHECK(page.line("ammonia").amount == "0.5 ml");
}

TEST_CASE("a liquid that one column weighs and the other measures") {
    const PrintedPage page(R"(
    is a       fixer
    book       an almanack, 1934, Great Britain
    | Hypo                      250 g      5 ozs.
    | Glacial acetic acid       17 g       150 minims
    | Water to                  1000 c.c.  20 ozs.
)");
    // 150 imperial minims of 1.05 g/ml in 568.26 ml: 16.4 g/l
    CHECK(page.line("acetic acid").fault.empty());
    CHECK(page.line("acetic acid").form == "glacial");
}

TEST_CASE("temperatures, times and directions are no amounts") {
    const PrintedPage page(R"(
    is a       film developer
    | Water (125° F.)  24 ozs.  750 c.c.
    | Metol  1/4 oz.  7.5 grams
    | Cold water to make  32 ozs.  1 litre
    | Develop about 20 min. at 65° F.
    | Blacken with ammonia, one drachm to 5 ounces of water, and wash for 10 min.
)");
    REQUIRE(page.settled.lines.size() == 1);
    CHECK(page.solution().makes == "32 fl oz us");
    CHECK(page.settled.not_read.size() == 2);
}

TEST_CASE("old names are found, and misprinted ones where one letter tells") {
    const auto name = [](const std::string& printed) {
        const PrintedPage page("    | " + printed + "   5 g\n    | Water 1 l\n");
        const auto& line = page.settled.lines.front();
        return line.form.empty() ? line.name : line.name + " " + line.form;
    };
    // Common practice, no source.
    CHECK(name("Corrosive sublimate") == "mercury(II) chloride");
    CHECK(name("Perchloride of mercury") == "mercury(II) chloride");
    CHECK(name("Liver of sulphur") == "liver of sulfur");
    CHECK(name("Protosulphate of iron") == "iron(II) sulfate heptahydrate");
    CHECK(name("Chloride of gold") == "gold chloride");
    CHECK(name("Soda hyposulphite") == "sodium thiosulfate pentahydrate");
    CHECK(name("Sodium hyposulphite") == "sodium thiosulfate pentahydrate");
    CHECK(name("Hyposulphite") == "sodium thiosulfate pentahydrate");
    CHECK(name("Bichromate of potash") == "potassium dichromate");
    CHECK(name("Red prussiate of potash") == "potassium ferricyanide");
    CHECK(name("Ferridcyanide of potassium") == "potassium ferricyanide");
    CHECK(name("Salt of tartar") == "potassium carbonate");
    CHECK(name("Sulphocyanide of ammonium") == "ammonium thiocyanate");
    CHECK(name("Borate of soda") == "borax decahydrate");
    CHECK(name("Spirits of wine") == "ethanol");
    CHECK(name("Kalium bromide") == "potassium bromide");
    CHECK(name("Sod. sulphite, pure recryst.") == "sodium sulfite heptahydrate");
    CHECK(name("Hydroqninone") == "hydroquinone");
    // Not the chloride, from which it differs by two letters.
    CHECK(name("Potassium chlorate") == "Potassium chlorate");
}
