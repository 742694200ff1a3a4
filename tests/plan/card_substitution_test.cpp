// SPDX-License-Identifier: MIT
// What is not there, come by in another way: another form, a solution, a conversion. Recipes and logs are invented.
#include "plan/card_workspace.hpp"
#include "scruple/plan/swap.hpp"

using namespace scruple;
using namespace scruple::test;
using Do = plan::Work::Do;

namespace {

const std::string chemicals = R"(
chemical sodium metaborate
    form       anhydrous       NaBO2
    form       tetrahydrate    NaBO2·4H2O

chemical boric acid
    form       crystals        H3BO3

chemical sodium bromide
    form       anhydrous       NaBr
    ions       Na+ + Br-

chemical potassium bromide
    form       crystals        KBr
    ions       K+ + Br-

chemical sodium carbonate
    form       anhydrous       Na2CO3
    form       monohydrate     Na2CO3·H2O
    form       decahydrate     Na2CO3·10H2O
    ions       2 Na+ + CO3-2
    acts as    alkali
)";

const std::string from_borax = R"(
conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    excess     sodium hydroxide, 2 % more than it needs
    water                               12 ml at 25 C per 1 g borax (decahydrate)
    borax (decahydrate)
    sodium hydroxide
)";

const std::string from_boric_acid = R"(
conversion of sodium metaborate (anhydrous)
    reaction   boric acid + sodium hydroxide -> sodium metaborate (anhydrous) + 2 water
    water                               5 ml per 1 g boric acid
    boric acid
    sodium hydroxide
)";

std::string recipe_with(const std::string& line, const std::string& water = "700 ml") {
    return "\nrecipe Breaker\n    water " + water + "\n    " + line + "\n    water to make 1 l\n";
}

std::string log_of(const std::string& lines) {
    std::string text = "\nlog\n";
    for (std::size_t at = 0; at < lines.size();) {
        const std::size_t end = std::min(lines.find(';', at), lines.size());
        text += "    2026-11-20 on shelf " + lines.substr(at, end - at) + "\n";
        at = end + 1;
    }
    return text;
}

/// A recipe and a log, and one chemical that is not there.
struct Bench {
    CardDesk desk;
    explicit Bench(const std::string& text, const std::string& library = "") : desk(chemicals + text, library) {}

    [[nodiscard]] plan::CardRequest without(const std::string& chemical, plan::HowMuch how_much = {}) const {
        plan::CardRequest request = desk.request("breaker", std::move(how_much));
        request.instead = {{desk.chemical(chemical), check::none}};
        return request;
    }
    [[nodiscard]] plan::Card card(const std::string& chemical) const { return desk.card(without(chemical)); }
};

double grams(const plan::Card& card, const std::string& chemical, const std::string& form = "") {
    return gathered(card, chemical, form).amount.value.to_double();
}

const plan::Substitution& only(const plan::Card& card) {
    REQUIRE(card.substituted.size() == 1);
    return card.substituted.front();
}

}  // namespace

TEST_CASE("another form on the shelf is weighed mole for mole") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g") +
                      log_of("sodium carbonate (monohydrate) 200 g"));
    const auto card = bench.card("sodium carbonate");
    // Monohydrate for anhydrous: 1.1700 g a gram (equivalence_factors.csv, standard handbook factor).
    CHECK(grams(card, "sodium carbonate", "monohydrate") == doctest::Approx(40 * 1.17).epsilon(0.0002));
    CHECK(only(card).kind.find("same species, exact") == 0);
    CHECK(plain_blanks(only(card).wanted) == "sodium carbonate (anhydrous) 40 g");
    CHECK(says({only(card).taken}, "sodium carbonate (monohydrate) 46.8 g"));
}

TEST_CASE("of two forms the one is taken of which there is enough") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g") +
                      log_of("sodium carbonate (monohydrate) 20 g;sodium carbonate (decahydrate) 500 g"));
    const auto card = bench.card("sodium carbonate");
    // 40 g × 286.138 / 105.988 (CIAAW 2021 abridged weights)
    CHECK(grams(card, "sodium carbonate", "decahydrate") == doctest::Approx(107.99).epsilon(0.0002));
    CHECK(says(only(card).others, "20 g sodium carbonate (monohydrate) on hand, 46.8 g needed"));
}

TEST_CASE("a percent solution comes by volume, and the mark takes its water") {
    const Bench bench(recipe_with("potassium bromide 2 g") + log_of("potassium bromide (10 % w/v) 100 ml"));
    const auto card = bench.card("potassium bromide");
    CHECK(amount(card.work[0]) == "700 ml");
    CHECK(shown(gathered(card, "potassium bromide", "10 % w/v").amount) == "20 ml");
    CHECK(says(work_of(card, "potassium bromide (10 % w/v)").details, "(= 2 g)"));
}

TEST_CASE("what the mark has no room for comes out of the recipe's water") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g", "950 ml") +
                      log_of("sodium carbonate (anhydrous, 20 % w/v) 1 l"));
    const auto card = bench.card("sodium carbonate");
    // 200 ml of solution: 950 + 200 is 150 ml past the mark
    CHECK(amount(card.work[0]) == "800 ml");
    CHECK(running(card.work[1]) == "1000 ml");
}

TEST_CASE("what does not fit is refused with the smallest volume that would do") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g", "950 ml") +
                      log_of("sodium carbonate (anhydrous, 5 % w/v) 1 l"));
    // 800 ml of solution; half of the 950 ml stays: 475 + 800 = 1275
    const std::string message = bench.desk.refusal(bench.without("sodium carbonate"));
    CHECK(message.find("There is no way to 40 g sodium carbonate (anhydrous) from what the log has on hand") == 0);
    CHECK(message.find("there is no room for it in 1000 ml; it would fit into 1275 ml or more") != std::string::npos);
}

TEST_CASE("without a mark the sum of the lines stays what it was") {
    const Bench bench("\nrecipe Breaker\n    water 500 ml\n    potassium bromide 2 g\n" +
                      log_of("potassium bromide (10 % w/v) 100 ml"));
    const auto card = bench.card("potassium bromide");
    // 2 g of a salt take up 0.6 ml (0.30 ml a gram), the solution brings 20 ml
    CHECK(card.work[0].amount->value.to_double() == doctest::Approx(480.6));
    CHECK(card.makes.value.to_double() == doctest::Approx(500.6).epsilon(0.0005));
}

TEST_CASE("a solution that holds the chemical alone stands ready") {
    const Bench bench(
        recipe_with("potassium bromide 2 g") +
        "\nrecipe bromide stock\n    water 180 ml\n    potassium bromide 25 g\n    water to make 250 ml\n" +
        log_of("bromide stock 90 ml"));
    const auto card = bench.card("potassium bromide");
    CHECK(shown(gathered(card, "bromide stock").amount) == "20 ml");
    for (const auto& row : card.contents) CHECK(row.g_per_l == doctest::Approx(2));
}

TEST_CASE("a solution is no stand-in where it does not say for certain what it holds") {
    for (const std::string line : {"potassium bromide 25 g, optional", "potassium bromide (10 % w/v) 100 ml"}) {
        CAPTURE(line);
        const Bench bench(recipe_with("potassium bromide 2 g") + "\nrecipe bromide stock\n    water 120 ml\n    " +
                          line + "\n    water to make 250 ml\n" + log_of("bromide stock 90 ml"));
        CHECK(std::holds_alternative<plan::Refusal>(
            plan::make_card(bench.desk.model(), bench.without("potassium bromide"))));
    }
}

TEST_CASE("a liquid by weight stands in for crystals") {
    const Bench bench(recipe_with("ammonium thiosulfate (crystals) 150 g") +
                      log_of("ammonium thiosulfate (60 % w/w) 1 l"));
    const auto card = bench.card("ammonium thiosulfate");
    // 150 g / (0.60 × 1.25 g/ml, the density of the tests' shelf)
    CHECK(shown(gathered(card, "ammonium thiosulfate", "60 % w/w").amount) == "200 ml");
}

TEST_CASE("a divided weighing goes on in the other form") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g, 4 g now\n    sodium carbonate the rest") +
                      log_of("sodium carbonate (monohydrate) 200 g"));
    const auto card = bench.card("sodium carbonate");
    CHECK(shown(gathered(card, "sodium carbonate", "monohydrate").amount) == "46.8 g");
    CHECK(amount(card.work[1]) == "4.68 g");
    CHECK(amount(card.work[2]) == "42.12 g");
}

TEST_CASE("a conversion is taken when all that it needs is on hand") {
    const Bench bench(from_borax + from_boric_acid + recipe_with("sodium metaborate (anhydrous) 20 g") +
                      log_of("boric acid 100 g;borax (decahydrate) 5 g;sodium hydroxide 50 g"));
    const auto card = bench.card("sodium metaborate");
    // 20 g / 65.80 g/mol × 61.83 g/mol
    CHECK(grams(card, "boric acid") == doctest::Approx(18.79).epsilon(0.001));
    CHECK(only(card).why == "all that it takes is on hand; that holds for no other way");
    CHECK(says(only(card).others, "5 g borax on hand, 28.98 g needed"));
}

TEST_CASE("by conversion in a recipe looks at the shelf as well") {
    const std::string made = "sodium metaborate (anhydrous) 20 g, by conversion";
    const Bench bench(from_borax + from_boric_acid + recipe_with(made) +
                      log_of("boric acid 100 g;sodium hydroxide 50 g"));
    CHECK(grams(bench.desk.card("breaker"), "boric acid") == doctest::Approx(18.79).epsilon(0.001));
    const Bench without_log(from_borax + from_boric_acid + recipe_with(made));
    const auto card = without_log.desk.card("breaker");
    CHECK(grams(card, "borax") == doctest::Approx(28.98).epsilon(0.001));
    CHECK(says(only(card).others, "boric acid"));
}

TEST_CASE("what the recipe wants made is made, and a jar of it that is there is named") {
    const Bench bench(from_borax + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion") +
                      log_of("borax (decahydrate) 100 g;sodium hydroxide 50 g;sodium metaborate (anhydrous) 100 g;"
                             "sodium metaborate (tetrahydrate) 100 g"));
    const auto card = bench.desk.card("breaker");
    CHECK(grams(card, "borax") == doctest::Approx(28.98).epsilon(0.001));
    CHECK(says(only(card).others, "sodium metaborate (anhydrous) as it is: on hand, but the recipe wants it made"));
    CHECK(says(only(card).others, "sodium metaborate (tetrahydrate) 41.9 g: same species, exact; on hand, but"));
}

TEST_CASE("what a recipe wants made and the shelf has too little for is made all the same, and told") {
    const Bench bench(from_borax + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion") +
                      log_of("borax (decahydrate) 100 g;sodium hydroxide 2 g"));
    CHECK(says({only(bench.desk.card("breaker")).why}, "2 g sodium hydroxide on hand, 6.2 g needed"));
}

TEST_CASE("where a solution is asked for, one that stands ready comes before weighing") {
    const std::string recipes = recipe_with("potassium bromide (10 % w/v) 30 ml") +
                                "\nrecipe bromide stock\n    water 180 ml\n    potassium bromide 50 g\n"
                                "    water to make 250 ml\n";
    const Bench with_stock(recipes + log_of("bromide stock 90 ml;potassium bromide 100 g"));
    CHECK(shown(gathered(with_stock.card("potassium bromide"), "bromide stock").amount) == "15 ml");
    const Bench with_jar(recipes + log_of("potassium bromide 100 g"));
    CHECK(grams(with_jar.card("potassium bromide"), "potassium bromide") == 3);
}

TEST_CASE("the log counts up to the day of mixing") {
    const Bench bench(
        from_borax + from_boric_acid + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion") +
        log_of("boric acid 100 g;sodium hydroxide 50 g") +
        "    2026-12-24 used boric acid 90 g for ants\n    2026-12-24 received borax (decahydrate) 50 g\n");
    plan::CardRequest request = bench.desk.request("breaker");
    CHECK(grams(bench.desk.card(request), "borax") == doctest::Approx(28.98).epsilon(0.001));
    request.mixed_on = 20780;  // 2026-11-23
    CHECK(grams(bench.desk.card(request), "boric acid") == doctest::Approx(18.79).epsilon(0.001));
}

TEST_CASE("a conversion of one's own comes before the library's") {
    const Bench bench(from_boric_acid + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion"), from_borax);
    const auto card = bench.desk.card("breaker");
    CHECK(grams(card, "boric acid") == doctest::Approx(18.79).epsilon(0.001));
    CHECK(says({only(card).why}, "the conversion is your own, and comes first"));
    const Bench turned(from_borax + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion"), from_boric_acid);
    CHECK(grams(turned.desk.card("breaker"), "borax") == doctest::Approx(28.98).epsilon(0.001));
}

TEST_CASE("the library's conversion is taken where one's own lacks a reagent") {
    const Bench bench(from_boric_acid + recipe_with("sodium metaborate (anhydrous) 20 g, by conversion") +
                          log_of("borax (decahydrate) 100 g;sodium hydroxide 50 g"),
                      from_borax);
    CHECK(grams(bench.desk.card("breaker"), "borax") == doctest::Approx(28.98).epsilon(0.001));
}

TEST_CASE("a conversion serves another form by mole") {
    const Bench bench(from_borax + recipe_with("sodium metaborate (tetrahydrate) 20 g, by conversion"));
    const auto card = bench.desk.card("breaker");
    // 1.446 g tetrahydrate a gram of borax, which takes 0.210 g of lye (equivalence_factors.csv, stoichiometry)
    CHECK(grams(card, "borax") == doctest::Approx(20 / 1.446).epsilon(0.0005));
    CHECK(grams(card, "sodium hydroxide") == doctest::Approx(20 / 1.446 * 0.210 * 1.02).epsilon(0.005));
}

TEST_CASE("a reagent is taken in the form that there is") {
    const std::string bicarbonate = R"(
conversion of sodium bicarbonate
    reaction   sodium carbonate (anhydrous) + carbon dioxide (gas) + water -> 2 sodium bicarbonate
    water                               12 ml per 1 g sodium carbonate (anhydrous)
    sodium carbonate (anhydrous)
    carbon dioxide (gas)
)";
    const Bench bench(bicarbonate + recipe_with("sodium bicarbonate 20 g, by conversion", "900 ml") +
                      log_of("sodium carbonate (decahydrate) 500 g;carbon dioxide (gas) 500 g"));
    // 20 g / 84.006 / 2 × 286.138 g/mol
    CHECK(grams(bench.desk.card("breaker"), "sodium carbonate", "decahydrate") ==
          doctest::Approx(34.06).epsilon(0.001));
}

TEST_CASE("a like thing is named and never taken") {
    const Bench bench(recipe_with("potassium bromide 2 g") + log_of("sodium bromide (anhydrous) 100 g"));
    // 2 g × 102.894 / 119.002; for sodium bromide from the potassium salt a book has 1.16 (equivalence_factors.csv)
    const std::string message = bench.desk.refusal(bench.without("potassium bromide"));
    CHECK(message.find("sodium bromide 1.729 g, as many moles of Br-: like function, test it first") !=
          std::string::npos);
}

TEST_CASE("an alkali of the same family is named without a figure") {
    const std::string alkalis = R"(
chemical borax
    form       decahydrate     Na2B4O7·10H2O
    ions       2 Na+ + B4O7-2

chemical sodium metaborate
    form       anhydrous       NaBO2
    ions       Na+ + BO2-

chemical sodium hydroxide
    form       pellets         NaOH
    ions       Na+ + OH-
)";
    const CardDesk desk(alkalis + recipe_with("borax (decahydrate) 10 g") +
                        log_of("sodium metaborate (anhydrous) 100 g;sodium hydroxide 100 g"));
    plan::CardRequest request = desk.request("breaker");
    request.instead = {{desk.chemical("borax"), check::none}};
    const std::string message = desk.refusal(request);
    CHECK(message.find("sodium metaborate, mild alkali as well: like function, test it first; no figure follows") !=
          std::string::npos);
    CHECK(message.find("sodium hydroxide") == std::string::npos);
}

TEST_CASE("a conversion without a line that puts something in is advice") {
    const std::string baking = R"(
conversion of sodium carbonate (anhydrous)
    reaction   2 sodium bicarbonate -> sodium carbonate (anhydrous) + water + carbon dioxide (gas)
    note       by heat, until it weighs no less
)";
    const Bench bench(baking + recipe_with("sodium carbonate (anhydrous) 40 g") + log_of("sodium bicarbonate 500 g"));
    const std::string message = bench.desk.refusal(bench.without("sodium carbonate"));
    CHECK(message.find("from 63.41 g sodium bicarbonate: advice only, by heat, until it weighs no less") !=
          std::string::npos);
}

TEST_CASE("from the shelf: what there is enough of stays, the rest is come by otherwise") {
    const Bench bench(from_borax +
                      recipe_with("sodium sulfite (anhydrous) 40 g\n    sodium metaborate (anhydrous) 10 g\n"
                                  "    sodium carbonate (anhydrous) 20 g") +
                      log_of("sodium sulfite (anhydrous) 500 g;borax (decahydrate) 100 g;sodium hydroxide 20 g;"
                             "sodium carbonate (monohydrate) 100 g"));
    plan::CardRequest request = bench.desk.request("breaker");
    request.from_shelf = true;
    const auto card = bench.desk.card(request);
    CHECK(card.substituted.size() == 2);
    CHECK(grams(card, "sodium sulfite") == 40);
    CHECK(grams(card, "borax") == doctest::Approx(14.49).epsilon(0.001));
    CHECK(grams(card, "sodium carbonate", "monohydrate") == doctest::Approx(23.4).epsilon(0.001));
}

TEST_CASE("one jar is not used twice") {
    // The recipe itself takes 4 g of the 5 g of lye; the conversion needs 3.1 g.
    const Bench bench(from_borax + recipe_with("sodium metaborate (anhydrous) 10 g\n    sodium hydroxide 4 g") +
                      log_of("borax (decahydrate) 100 g;sodium hydroxide 5 g"));
    CHECK(bench.desk.refusal(bench.without("sodium metaborate")).find("1 g sodium hydroxide on hand, 3.1 g needed") !=
          std::string::npos);
}

TEST_CASE("from the shelf without a log is refused") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 20 g"));
    plan::CardRequest request = bench.desk.request("breaker");
    request.from_shelf = true;
    CHECK(bench.desk.refusal(request).find("The log does not say what is on the shelf") == 0);
}

TEST_CASE("without a log every way is open, and the card says so") {
    const Bench bench(from_borax + recipe_with("sodium metaborate (anhydrous) 20 g"));
    const auto card = bench.card("sodium metaborate");
    CHECK(grams(card, "borax") == doctest::Approx(28.98).epsilon(0.001));
    CHECK(says({only(card).why}, "the log does not say what is on hand: see that it is there"));
}

TEST_CASE("the jar of a reagent sizes a batch of what is substituted") {
    const Bench bench(from_borax + recipe_with("sodium metaborate (anhydrous) 20 g"));
    const plan::MakeWith borax{bench.desk.chemical("borax"), 0, {14493, 1000}};
    CHECK(bench.desk.card(bench.without("sodium metaborate", borax)).makes.value.to_double() ==
          doctest::Approx(500).epsilon(0.001));
}

TEST_CASE("the room under the mark helps out where the water before is too little") {
    const Bench bench(from_borax + recipe_with("sodium sulfite (anhydrous) 40 g\n"
                                               "    sodium metaborate (anhydrous) 20 g, by conversion",
                                               "300 ml"));
    // 347.8 ml: half of the 300 ml, and the rest out of what makes up
    const auto card = bench.desk.card("breaker");
    CHECK(amount(card.work[0]) == "150 ml");
    CHECK(card.makes.value == 1000);
}

TEST_CASE("the text of a recipe says the same as its card") {
    const Bench bench(recipe_with("sodium carbonate (anhydrous) 40 g", "950 ml") +
                      log_of("sodium carbonate (anhydrous, 20 % w/v) 1 l"));
    const auto lines = plan::rewritten(bench.desk.model(), bench.without("sodium carbonate"));
    REQUIRE(std::holds_alternative<std::vector<plan::Rewriting>>(lines));
    const auto& all = std::get<std::vector<plan::Rewriting>>(lines);
    REQUIRE(all.size() == 2);
    CHECK(all[0].substance.empty());
    CHECK(all[0].amounts == std::vector<check::Exact>{800});
    CHECK(all[1].substance == "sodium carbonate (anhydrous, 20 % w/v)");
    CHECK(all[1].amounts == std::vector<check::Exact>{200});
    CHECK(all[1].unit == "ml");
    CHECK(all[1].in_place_of == "sodium carbonate (anhydrous)");
}

TEST_CASE("the text says from what, where there is more than one way to make it") {
    const std::string log = log_of("boric acid 100 g;sodium hydroxide 50 g");
    const std::string asked = recipe_with("sodium metaborate (anhydrous) 20 g");
    const auto made = [&](const Bench& bench) {
        const auto lines = plan::rewritten(bench.desk.model(), bench.without("sodium metaborate"));
        REQUIRE(std::holds_alternative<std::vector<plan::Rewriting>>(lines));
        const auto& all = std::get<std::vector<plan::Rewriting>>(lines);
        REQUIRE(all.size() == 1);
        return all.front().made;
    };
    CHECK(made(Bench(from_borax + from_boric_acid + asked + log)) == "by conversion from boric acid");
    CHECK(made(Bench(from_boric_acid + asked + log)) == "by conversion");
}

TEST_CASE("from what is the author's to say") {
    const Bench bench(from_borax + from_boric_acid +
                      recipe_with("sodium metaborate (anhydrous) 20 g, by conversion from borax") +
                      log_of("boric acid 100 g;sodium hydroxide 50 g"));
    const auto card = bench.desk.card("breaker");
    CHECK(grams(card, "borax") == doctest::Approx(28.98).epsilon(0.001));
    CHECK(says({only(card).why}, "the recipe says from what; no borax on hand"));
    CHECK(says(only(card).others, "made from 18.79 g boric acid"));
    for (const auto& row : card.contents) CHECK(row.chemical != "boric acid");
}
