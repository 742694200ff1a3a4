// SPDX-License-Identifier: MIT
// Amounts, running volumes and details of a card, against sums written out beside each check.
#include "plan/card_workspace.hpp"

using namespace scruple;
using namespace scruple::test;
using plan::MakeVolume;
using Do = plan::Work::Do;

namespace {

const std::string lamplight = R"(
recipe Lamplight
    is a       film developer
    strength   stock
    source     invented for this test
    caution    "Gloves."
    keeps      6 months full, 2 weeks half full
    water                               700 ml at 45 to 50 C
    sodium sulfite (anhydrous)          90 g, a pinch now
    metol                               5 g
    stir until clear
    sodium sulfite                      the rest
    potassium bromide (10 % w/v)        8 ml
    cool below 27 C
    water to make                       1 l
    expect pH 8.3 to 8.7
)";

}  // namespace

TEST_CASE("a batch as written keeps the order and the numbers of its lines") {
    const auto card = CardDesk(lamplight).card("lamplight");
    CHECK(card.recipe == "Lamplight");
    CHECK(card.section == "");
    CHECK(card.is_a == "film developer");
    CHECK(shown(card.makes) == "1000 ml");
    REQUIRE(card.work.size() == 8);
    for (std::size_t i = 0; i < card.work.size(); ++i) CHECK(card.work[i].n == static_cast<int>(i) + 1);
    CHECK(card.work[0].what_to_do == Do::water);
    CHECK(plain_blanks(card.work[0].at) == "45 to 50 °C");
    CHECK(amount(card.work[0]) == "700 ml");
    CHECK(card.work[3].what_to_do == Do::stir);
    CHECK(card.work[3].clear_box);
    CHECK(card.work[6].what_to_do == Do::cool);
    CHECK(plain_blanks(card.work[6].what) == "cool below 27 °C");
    CHECK(card.work[7].what_to_do == Do::make_up);
    CHECK(card.work[7].up_to);
    CHECK(amount(card.work[7]) == "1000 ml");
}

TEST_CASE("350 ml of a litre takes 35 % of everything") {
    const auto card = CardDesk(lamplight).card("lamplight", MakeVolume{350});
    CHECK(amount(card.work[0]) == "245 ml");                            // 700 × 0.35
    CHECK(amount(work_of(card, "metol")) == "1.75 g");                  // 5 × 0.35
    CHECK(shown(gathered(card, "sodium sulfite").amount) == "31.5 g");  // 90 × 0.35
    const auto& bromide = work_of(card, "potassium bromide (10 % w/v)");
    CHECK(amount(bromide) == "2.8 ml");          // 8 × 0.35
    CHECK(says(bromide.details, "(= 0.28 g)"));  // 2.8 ml × 0.1 g/ml
    CHECK(amount(card.work.back()) == "350 ml");
}

TEST_CASE("figures without a bench stop at four digits, and the card says that nothing is rounded") {
    const auto card = CardDesk(lamplight).card("lamplight", MakeVolume{check::Exact(1000, 3)});
    CHECK(amount(work_of(card, "metol")) == "1.667 g");  // 5 / 3
    CHECK(amount(card.work[0]) == "233.3 ml");           // 700 / 3
    CHECK(says(card.assumed, "nothing is rounded to an instrument"));
}

TEST_CASE("a divided weighing is gathered once, then a pinch, then the rest") {
    const auto card = CardDesk(lamplight).card("lamplight");
    const auto& row = gathered(card, "sodium sulfite");
    CHECK(shown(row.amount) == "90 g");
    CHECK(row.note == "weighed once, used in two goes");
    CHECK(row.mol == doctest::Approx(90 / 126.04).epsilon(0.0005));  // Na2SO3: 2 × 22.990 + 32.06 + 3 × 15.999
    CHECK(card.work[1].amount == std::nullopt);
    CHECK(says(card.work[1].details, "a pinch of the 90 g"));
    CHECK(card.work[1].weighed_box);
    CHECK(card.work[4].what == "sodium sulfite, the rest");
    CHECK(amount(card.work[4]) == "90 g");
    CHECK_FALSE(card.work[4].weighed_box);
}

TEST_CASE("a stated first piece leaves the difference for the rest") {
    const auto card = CardDesk(R"(
recipe Lamplight
    water                               700 ml
    sodium sulfite (anhydrous)          90 g, 2 g now
    metol                               5 g
    sodium sulfite                      the rest
    water to make                       1 l
)")
                          .card("lamplight", MakeVolume{500});
    CHECK(amount(card.work[1]) == "1 g");   // 2 / 2
    CHECK(amount(card.work[3]) == "44 g");  // 90 / 2 - 2 / 2
    CHECK(shown(gathered(card, "sodium sulfite").amount) == "45 g");
}

TEST_CASE("the running volume counts liquids, estimates solids, and ends at the mark") {
    const auto card = CardDesk(lamplight).card("lamplight");
    CHECK(running(card.work[0]) == "700 ml");
    CHECK_FALSE(card.work[0].running_estimated);
    // No ions are written for these: 0.75 ml a gram. 700 + 0.75 × (90 / 50) = 701.35; + 0.75 × 5 = 705.1;
    // + 0.75 × 88.2 = 771.25; + 8 = 779.25.
    CHECK(running(card.work[1]) == "701 ml");
    CHECK(running(card.work[2]) == "705 ml");
    CHECK(running(card.work[4]) == "771 ml");
    CHECK(running(card.work[5]) == "779 ml");
    CHECK(card.work[5].running_estimated);
    CHECK(running(card.work[7]) == "1000 ml");
    CHECK_FALSE(card.work[7].running_estimated);
    CHECK(says(card.assumed, "is an estimate"));
    // 700 + (1000 - 779.25), up to the next ml
    CHECK(shown(gathered(card, "water").amount) == "921 ml");
}

TEST_CASE("a second vessel has its own running volume and is poured in by halves") {
    const auto card = CardDesk(R"(
recipe Weir
    water                               500 ml
    apart lye
    water                               200 ml at 20 C
    sodium hydroxide                    40 g
    pour in half of lye, slowly, stirring
    wait 5 min
    pour in the rest of lye
    water to make                       1 l
)")
                          .card("weir");
    const auto& lye_water = card.work[2];
    CHECK(lye_water.vessel == "lye");
    CHECK(lye_water.what_to_do == Do::water);
    CHECK(running(lye_water) == "200 ml");
    CHECK(running(card.work[3]) == "230 ml");  // 200 + 0.75 × 40
    const auto& half = work_of(card, "pour in part of lye");
    CHECK(amount(half) == "115 ml");
    CHECK(half.about);
    CHECK(says(half.details, "slowly"));
    CHECK(half.vessel == "");
    CHECK(running(half) == "615 ml");
    CHECK(work_of(card, "wait 5 min").seconds == 300);
    CHECK(running(work_of(card, "pour in lye")) == "730 ml");
}

TEST_CASE("a time from one to another is in a unit in which both read well") {
    const auto card = CardDesk(R"(
recipe Slow
    water                               700 ml
    metol                               2 g
    wait 60 to 75 min
    wait 60 to 120 min
    wait 36 to 48 h
    wait 1 to 1.3 min
    water to make                       1 l
)")
                          .card("slow");
    CHECK(work_of(card, "wait 60 to 75 min").seconds == 75 * 60);
    CHECK(work_of(card, "wait 1 to 2 h").seconds == 120 * 60);
    CHECK(work_of(card, "wait 1.5 to 2 days").seconds == 48 * 3600);
    CHECK(work_of(card, "wait 60 to 78 s").seconds == 78);
}

TEST_CASE("old units are shown as written, and only where the batch is as written") {
    const CardDesk desk(R"(
recipe Grainstore
    water                               20 fl oz uk
    metol                               90 grains
    water to make                       40 fl oz uk
)");
    const auto card = desk.card("grainstore");
    CHECK(amount(work_of(card, "metol")) == "5.832 g");  // 90 × 0.06479891
    CHECK(says(work_of(card, "metol").details, "as written: 90 grains"));
    CHECK(amount(card.work[0]) == "568.3 ml");  // 20 × 28.4130625
    const auto half = desk.card("grainstore", MakeVolume{500});
    CHECK(work_of(half, "metol").details.empty());
}

TEST_CASE("parts are measured out by parts, other recipes are gathered as solutions") {
    const auto card = CardDesk(lamplight + R"(
recipe Tray
    is a       paper developer
    dilute Lamplight 1+3
)")
                          .card("tray", MakeVolume{800});
    CHECK(amount(card.work[0]) == "200 ml");  // 800 / 4
    CHECK(says(card.work[0].details, "1 part"));
    CHECK(amount(card.work[1]) == "600 ml");
    CHECK(says(card.work[1].details, "3 parts"));
    CHECK(gathered(card, "Lamplight").solution);
    CHECK(running(card.work[1]) == "800 ml");
}

TEST_CASE("an optional line says why and moves nothing") {
    const auto card = CardDesk(R"(
recipe Lamplight
    water                               500 ml
    potassium bromide (10 % w/v)        5 ml, optional "for old paper"
    acetic acid (glacial)               about 3 ml, until pH 5.0
    water to make                       1 l
)")
                          .card("lamplight");
    CHECK(card.work[1].optional);
    CHECK(says(card.work[1].details, "optional: for old paper"));
    CHECK(card.work[1].running == std::nullopt);
    CHECK(gathered(card, "potassium bromide", "10 % w/v").optional);
    CHECK(card.work[2].about);
    CHECK(says(card.work[2].details, "until pH 5"));
    CHECK(running(card.work[2]) == "503 ml");
    CHECK(says(card.assumed, "acetic acid is taken to weigh 1.05 g a ml"));
}

TEST_CASE("the amount of a variant is its own") {
    const CardDesk desk(R"(
recipe Twofold
    variants   soft, normal
    water                               500 ml
    potassium bromide                   1 g soft, 2 g normal
    water to make                       1 l
)");
    auto request = desk.request("twofold", MakeVolume{500});
    request.variant = 1;
    const auto card = desk.card(request);
    CHECK(card.variant == "normal");
    CHECK(amount(work_of(card, "potassium bromide")) == "1 g");  // 2 / 2
}

TEST_CASE("an amount that is still open is refused") {
    const CardDesk desk(R"(
recipe Open
    water                               500 ml
    sodium hydroxide                    ? g
    water to make                       1 l
)");
    CHECK(desk.refusal(desk.request("open")).find("the amount of sodium hydroxide is still `?`") != std::string::npos);
}
