// SPDX-License-Identifier: MIT
// What a bench makes of the amounts: which instrument, how it rounds, and what to do where it cannot.
#include "plan/card_workspace.hpp"

using namespace scruple;
using namespace scruple::test;
using plan::MakeVolume;

namespace {

const std::string plain_mix = R"(
recipe Jetty
    water                               700 ml
    sodium sulfite (anhydrous)          64.44 g
    metol                               2.226 g
    potassium bromide (10 % w/v)        8.13 ml
    ammonium thiosulfate (60 % w/w)     33.3 ml
    water to make                       1 l
)";

std::string one_salt(const std::string& line) {
    return "\nrecipe Trace\n    water 700 ml\n    " + line + "\n    water to make 1 l\n";
}

}  // namespace

TEST_CASE("the finest balance that holds it, the smallest graduate that holds it") {
    const auto card = CardDesk(plain_mix).card_on("reedbank", "jetty");
    const auto& sulfite = work_of(card, "sodium sulfite");
    CHECK(amount(sulfite) == "64.4 g");  // past the 50 g of the fine balance, so by 0.1 g
    CHECK(plain_blanks(sulfite.amount->instrument) == "balance 0.1 g");
    CHECK(sulfite.amount->error_percent == doctest::Approx(100 * 0.04 / 64.44));
    const auto& metol = work_of(card, "metol");
    CHECK(amount(metol) == "2.23 g");
    CHECK(plain_blanks(metol.amount->instrument) == "balance 0.01 g");
    const auto& bromide = work_of(card, "potassium bromide (10 % w/v)");
    CHECK(amount(bromide) == "8.2 ml");  // 8.13 by 0.2
    CHECK(plain_blanks(bromide.amount->instrument) == "graduate 10 ml");
    CHECK(amount(work_of(card, "ammonium thiosulfate (60 % w/w)")) == "33 ml");
    CHECK(plain_blanks(card.work[0].amount->instrument) == "jug 2 l");
    CHECK(says(card.assumed, "Rounded to the instruments of the bench Reedbank"));
    CHECK(says(card.assumed, "ammonium thiosulfate (60 % w/w) is taken to weigh 1.25 g a ml"));
}

TEST_CASE("the gather list is the sum of what the work weighs") {
    const auto card = CardDesk(R"(
recipe Twice
    water                               700 ml
    metol                               1.004 g
    sodium sulfite (anhydrous)          20 g
    metol                               1.004 g
    water to make                       1 l
)")
                          .card_on("reedbank", "twice");
    CHECK(shown(gathered(card, "metol").amount) == "2 g");  // 1.00 + 1.00
    CHECK(gathered(card, "metol").amount.error_percent == doctest::Approx(100 * 0.008 / 2.008));
}

TEST_CASE("one chemical in two strengths is two things to put out") {
    const auto card = CardDesk(R"(
recipe Twice
    water                               700 ml
    acetic acid (10 % w/v)              20 ml
    acetic acid (5 % w/v)               30 ml
    acetic acid (10 % w/v)              20 ml
    water to make                       1 l
)")
                          .card_on("reedbank", "twice");
    std::vector<std::string> acids;
    for (const auto& one : card.gather)
        if (one.chemical == "acetic acid") acids.push_back(plain_blanks(one.form) + ": " + shown(one.amount));
    REQUIRE(acids.size() == 2);
    CHECK(acids[0] == "10 % w/v: 40 ml");
    CHECK(acids[1] == "5 % w/v: 30 ml");
}

TEST_CASE("what no instrument holds is weighed in goes and measured in fills") {
    const auto card = CardDesk(R"(
recipe Tank
    water                               7 l
    sodium sulfite (anhydrous)          1234.56 g
    water to make                       10 l
)")
                          .card_on("reedbank", "tank");
    const auto& sulfite = work_of(card, "sodium sulfite");
    CHECK(amount(sulfite) == "1234.6 g");  // 2 × 500 + 234.6
    CHECK(says(sulfite.details, "in 3 goes: 2 × 500 g and 234.6 g"));
    CHECK(amount(card.work[0]) == "7000 ml");
    CHECK(says(card.work[0].details, "in 4 fills: 3 × 2000 ml and 1000 ml"));
    CHECK(amount(card.work.back()) == "10 l");
    CHECK(says(card.work.back().details, "by the mark of the tank"));
}

TEST_CASE("a trace is never rounded to nothing, and goes through a percent solution") {
    const auto card = CardDesk(one_salt("metol 0.03 g") + coarse_bench).card_on("coarse", "trace");
    const auto& metol = work_of(card, "metol");
    CHECK(amount(metol) == "0.03 g");
    REQUIRE(metol.advice.size() == 1);
    // 50 divisions are 50 g; even in a litre the 0.03 g are then in 0.6 ml, which this bench cannot measure.
    CHECK(plain_blanks(metol.advice[0]) ==
          "the balance 1 g cannot weigh 0.03 g well (off by 3200 %): use one that reads to 0.003 g or finer");
}

TEST_CASE("0.03 g on a balance of 0.01 g: 3 ml of a 1 % solution") {
    const auto card = CardDesk(one_salt("metol 0.03 g")).card_on("reedbank", "trace");
    const auto& metol = work_of(card, "metol");
    CHECK(amount(metol) == "0.03 g");
    REQUIRE(metol.advice.size() == 1);
    // half a division, 0.005 g, is 17 % of 0.03 g; 1 g is 100 divisions; 0.03 g / 0.01 g/ml = 3 ml
    CHECK(plain_blanks(metol.advice[0]) ==
          "the balance 0.01 g can weigh 0.03 g only to within 17 %: dissolve 1 g in water to make 100 ml (1 % w/v) and "
          "take 3 ml (syringe 5 ml); no solubility is recorded for it: see that all of it dissolves");
}

TEST_CASE("rounding past 5 % names how far it is off") {
    const auto card = CardDesk(one_salt("metol 0.034 g")).card_on("reedbank", "trace");
    const auto& metol = work_of(card, "metol");
    CHECK(amount(metol) == "0.034 g");
    CHECK(metol.amount->error_percent == doctest::Approx(100 * 0.004 / 0.034));
    REQUIRE(metol.advice.size() == 1);
    CHECK(plain_blanks(metol.advice[0]).find("cannot weigh 0.034 g well (off by 12 %)") != std::string::npos);
    CHECK(plain_blanks(metol.advice[0]).find("take 3.4 ml") != std::string::npos);
}

TEST_CASE("a stock is never stronger than what dissolves, nor in water where water does not dissolve it") {
    const auto weak = CardDesk(one_salt("benzotriazole 0.03 g")).card_on("reedbank", "trace");
    // 2 g in 100 g water: up to 1.6 % is proposed
    CHECK(plain_blanks(work_of(weak, "benzotriazole").advice.at(0)).find("(1 % w/v) and take 3 ml (syringe 5 ml)") !=
          std::string::npos);
    const auto glycol = CardDesk(one_salt("phenidone 0.05 g")).card_on("reedbank", "trace");
    CHECK(plain_blanks(work_of(glycol, "phenidone").advice.at(0))
              .find("dissolve 1 g in propylene glycol to make 100 ml (1 % w/v in propylene glycol) and take 5 ml") !=
          std::string::npos);
}

TEST_CASE("an amount that is well weighed gets no advice") {
    const auto card = CardDesk(one_salt("metol 2.5 g")).card_on("reedbank", "trace");
    CHECK(work_of(card, "metol").advice.empty());
}

TEST_CASE("a liquid too small for its graduate is counted in drops or thinned") {
    const auto drops = CardDesk(one_salt("potassium bromide (10 % w/v) 0.15 ml")).card_on("reedbank", "trace");
    // 0.15 ml × 20 drops a ml
    CHECK(plain_blanks(work_of(drops, "potassium bromide (10 % w/v)").advice.at(0)).find("count 3 drops") !=
          std::string::npos);
    const auto thinned =
        CardDesk(one_salt("potassium bromide (10 % w/v) 2.5 ml") + coarse_bench).card_on("coarse", "trace");
    // 10 ml to 100 ml is a tenth of the strength, so ten times the 2.5 ml
    CHECK(plain_blanks(work_of(thinned, "potassium bromide (10 % w/v)").advice.at(0))
              .find("stir 10 ml of it into water to make 100 ml and take 25 ml (graduate 100 ml)") !=
          std::string::npos);
}

TEST_CASE("drops are counted whole, with the ml beside them") {
    const auto card =
        CardDesk(one_salt("potassium bromide (10 % w/v) 11 drops")).card_on("reedbank", "trace", MakeVolume{500});
    const auto& bromide = work_of(card, "potassium bromide (10 % w/v)");
    CHECK(amount(bromide) == "6 drops");  // 5.5
    CHECK(bromide.amount->error_percent == doctest::Approx(100 * 0.5 / 5.5));
    CHECK(says(bromide.details, "(= 0.275 ml)"));  // 5.5 / 20
    CHECK(says(card.assumed, "The dropper gives 20 drops of water to 1 ml"));
}

TEST_CASE("a volume that its jug reads badly is measured in fills of a graduate") {
    // 130 ml on the jug by 50 ml would be 150 ml, 15 % off; 100 ml and 30 ml by the graduate are exact
    const auto card = CardDesk(one_salt("ammonium thiosulfate (60 % w/w) 130 ml")).card_on("reedbank", "trace");
    const auto& thiosulfate = work_of(card, "ammonium thiosulfate (60 % w/w)");
    CHECK(amount(thiosulfate) == "130 ml");
    CHECK(says(thiosulfate.details, "in 2 fills: 100 ml and 30 ml"));
}

TEST_CASE("a final volume between the marks of the jug gets a mark of its own") {
    const auto card = CardDesk(one_salt("metol 5 g")).card_on("reedbank", "trace", MakeVolume{330});
    CHECK(amount(card.work.back()) == "330 ml");
    CHECK(says(card.work.back().details,
               "to a mark made before you begin: water measured in 4 fills: 3 × 100 ml and 30 ml"));
    const auto on_the_mark = CardDesk(one_salt("metol 5 g")).card_on("reedbank", "trace", MakeVolume{350});
    CHECK(on_the_mark.work.back().details.empty());
    CHECK(plain_blanks(on_the_mark.work.back().amount->instrument) == "jug 2 l");
}

TEST_CASE("the running volume is that of what the instruments read") {
    const auto card = CardDesk(one_salt("potassium bromide (10 % w/v) 8.13 ml")).card_on("reedbank", "trace");
    CHECK(running(card.work[1]) == "708.2 ml");  // 700 + 8.2
}

TEST_CASE("an amount in moles is weighed in grams") {
    const auto card = CardDesk(one_salt("sodium hydroxide 0.5 mol")).card_on("reedbank", "trace");
    CHECK(amount(work_of(card, "sodium hydroxide")) == "20 g");  // 0.5 × 39.997 = 19.9985, by 0.01 g
    CHECK(says(work_of(card, "sodium hydroxide").details, "as written: 0.5 mol"));
}

TEST_CASE("a bench without balance or graduate rounds nothing of that kind") {
    const auto card =
        CardDesk(one_salt("metol 1.23456 g") + "\nbench Bare\n    jug 1 l by 50 ml\n").card_on("bare", "trace");
    CHECK(amount(work_of(card, "metol")) == "1.235 g");
    CHECK(work_of(card, "metol").amount->instrument == "");
    CHECK(work_of(card, "metol").advice.empty());
}

TEST_CASE("a coarse amount asks for a finer balance or a larger batch") {
    // 2 g by 1 g is good to 25 % only; ten divisions are in five times the litre
    const auto card =
        CardDesk(one_salt("metol 2 g") + "\nbench Scale\n    balance 1 g up to 2 kg\n    jug 1 l by 50 ml\n")
            .card_on("scale", "trace");
    CHECK(plain_blanks(work_of(card, "metol").advice.at(0)) ==
          "the balance 1 g can weigh 2 g only to within 25 %: use a finer one, or make 5000 ml or more at once");
}
