// SPDX-License-Identifier: MIT
// Amounts written `?`.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "workspace.hpp"

using namespace scruple;
using diagnostics::Kind;

namespace {

/// The amount that the n-th ingredient came to.
double amount(const test::Workspace& workspace, std::size_t n, const std::string& section = "trial") {
    const auto& model = workspace.model();
    const auto& lines = model.sections[test::section_called(model, section)].lines;
    std::vector<const check::Addition*> additions;
    for (const auto& line : lines)
        if (const auto* addition = std::get_if<check::Addition>(&line)) additions.push_back(addition);
    REQUIRE(additions.size() > n);
    REQUIRE(additions[n]->worked_out);
    return additions[n]->shares.front().to_double();
}

bool reports(const test::Workspace& workspace, Kind kind) {
    return std::ranges::any_of(workspace.diagnostics(), [kind](const auto& one) { return one.kind == kind; });
}

void check_text(test::Workspace& workspace, const std::string& lines) {
    workspace.add("trial.scruple", "recipe Trial\n" + lines);
    workspace.check();
}

}  // namespace

TEST_CASE("an amount that was found is held to what dissolves") {
    test::Workspace workspace;
    workspace.add("siskin.scruple",
                  "recipe Siskin\n    water 500 ml\n    boric acid ?\n    water to make 1 l\n"
                  "    expect boric acid 200 g/l\n");
    workspace.check();
    const auto& all = workspace.diagnostics();
    // 4.7 g in 100 g of water at 20 °C: handbooks, recalled.
    CHECK(std::ranges::any_of(all, [](const auto& it) { return it.kind == Kind::will_not_all_dissolve; }));
}

TEST_CASE("the salt of a buffer from its pH") {
    // tests/reference/phreeqc_pH.csv, S19: 10 g/l acetic acid with 20 g/l of the trihydrate has pH 4.59 at 20 °C.
    test::Workspace workspace;
    check_text(workspace,
               "water 800 ml\nacetic acid (10 % w/v) 100 ml\nsodium acetate (trihydrate) ? g\n"
               "water to make 1 l\nexpect pH 4.59\n");
    CHECK(amount(workspace, 2) == doctest::Approx(20).epsilon(0.05));
    CHECK(reports(workspace, Kind::amount_found));
    CHECK_FALSE(reports(workspace, Kind::amount_left_open));
}

TEST_CASE("an amount from a content, exactly") {
    test::Workspace workspace;
    check_text(workspace, "water 300 ml\nmetol ? g\nwater to make 500 ml\nexpect metol 6 g/l\n");
    CHECK(amount(workspace, 1) == doctest::Approx(3).epsilon(1e-4));
}

TEST_CASE("an amount from an ion") {
    // 0.4 mol of sulfite ion is 0.4 × 126.04 g of the dry salt (tests/reference/molar_masses.csv: 126.037).
    test::Workspace workspace;
    check_text(workspace, "water 800 ml\nsodium sulfite (anhydrous) ? g\nwater to make 1 l\nexpect SO3-2 0.4 mol/l\n");
    CHECK(amount(workspace, 1) == doctest::Approx(50.415).epsilon(2e-4));
}

TEST_CASE("two amounts at once") {
    // S10: 5 g/l sodium carbonate and 15 g/l bicarbonate have pH 9.309 at 20 °C; the pK of the library is 0.01 higher.
    test::Workspace workspace;
    check_text(workspace,
               "water 800 ml\nsodium carbonate (anhydrous) ? g\nsodium bicarbonate ? g\nwater to make 1 l\n"
               "expect sodium bicarbonate 15 g/l\nexpect pH 9.32\n");
    CHECK(amount(workspace, 1) == doctest::Approx(5).epsilon(0.05));
    CHECK(amount(workspace, 2) == doctest::Approx(15).epsilon(1e-3));
}

TEST_CASE("amounts of parts, from what is expected of the working solution") {
    // By hand: a quarter of part A is 20 g/l, so 80 g. Of 0.7 mol/l of sodium the sulfite brings 2 × 20 / 126.037, and
    // the carbonate the rest: (0.7 - 0.31737) / 2 × 105.988 g/l × 4 (tests/reference/molar_masses.csv).
    test::Workspace workspace;
    check_text(workspace,
               "part A\n water 700 ml\n sodium sulfite (anhydrous) ? g\n water to make 1 l\n"
               "part B\n water 700 ml\n sodium carbonate (anhydrous) ? g\n water to make 1 l\n"
               "working\n mix part A + part B + water 1+1+2\n"
               " expect sodium sulfite (anhydrous) 20 g/l\n expect Na+ 0.7 mol/l\n");
    CHECK(amount(workspace, 1, "trial part a") == doctest::Approx(80).epsilon(1e-4));
    CHECK(amount(workspace, 1, "trial part b") == doctest::Approx(81.109).epsilon(2e-4));
}

TEST_CASE("a part that has an expectation of its own is found by that one") {
    test::Workspace workspace;
    check_text(workspace,
               "part A\n water 700 ml\n metol ? g\n water to make 1 l\n expect metol 8 g/l\n"
               "part B\n water 700 ml\n sodium chloride ? g\n water to make 1 l\n"
               "working\n mix part A + part B 1+3\n expect sodium chloride 30 g/l\n");
    CHECK(amount(workspace, 1, "trial part a") == doctest::Approx(8).epsilon(1e-4));
    CHECK(amount(workspace, 1, "trial part b") == doctest::Approx(40).epsilon(1e-4));
    // Nothing that is made of it says anything: it stays open.
    workspace.clear();
    check_text(workspace,
               "part A\n water 700 ml\n metol ? g\n water to make 1 l\n"
               "part B\n water 700 ml\n sodium chloride 40 g\n water to make 1 l\n expect sodium chloride 40 g/l\n");
    CHECK(reports(workspace, Kind::amount_left_open));
}

TEST_CASE("an amount of each variant") {
    test::Workspace workspace;
    check_text(
        workspace,
        "variants soft, hard\nwater 700 ml\nsodium chloride 10 g soft, 25 g hard\nsodium sulfite (anhydrous) ? g\n"
        "water to make 1 l\nexpect Na+ 1 mol/l\n");
    const auto& model = workspace.model();
    const auto& line = model.sections[test::section_called(model, "trial")].lines.at(2);
    const auto& found = std::get<check::Addition>(line).shares;
    REQUIRE_MESSAGE(found.size() == 2, test::described(workspace));
    // (1 - 10 / 58.443) / 2 × 126.037, and with 25 (the sulfite: tests/reference/molar_masses.csv; the
    // chloride: 22.990 + 35.453).
    CHECK(found[0].to_double() == doctest::Approx(52.236).epsilon(1e-4));
    CHECK(found[1].to_double() == doctest::Approx(36.061).epsilon(1e-4));
}

TEST_CASE("what cannot be met is said, with how near it comes") {
    test::Workspace workspace;
    check_text(workspace, "water 800 ml\nboric acid ? g\nwater to make 1 l\nexpect pH 9\n");
    CHECK(reports(workspace, Kind::amounts_not_found));
    // More unknown than expected: nothing to find them by.
    workspace.clear();
    check_text(workspace, "water 800 ml\nboric acid ? g\nborax (decahydrate) ? g\nwater to make 1 l\nexpect pH 9\n");
    CHECK(reports(workspace, Kind::amount_left_open));
}

TEST_CASE("a large amount is found to six digits, too") {
    test::Workspace workspace;
    check_text(workspace,
               "water 10000 l\nsodium sulfite (anhydrous) ?\nwater to make 30000 l\n"
               "expect sodium sulfite (anhydrous) 41.1523 g/l\n");
    CHECK(amount(workspace, 1) == doctest::Approx(1234570));
}
