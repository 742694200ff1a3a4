// SPDX-License-Identifier: MIT
// One form weighed for another, against published factors.
#include "scruple/plan/weigh.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "plan/shopping_workspace.hpp"
#include "scruple/check/contents.hpp"
#include "support/csv.hpp"

using namespace scruple;
using namespace scruple::test;
using check::Exact;

namespace {

check::Form form(const std::string& formula) {
    check::Form form;
    const auto read = chemistry::read_formula(formula);
    REQUIRE_MESSAGE(std::holds_alternative<chemistry::Formula>(read), formula);
    form.formula = std::get<chemistry::Formula>(read);
    form.molar_mass = chemistry::molar_mass(form.formula);
    return form;
}

double factor(const Row& row) {
    const Exact by_mole = check::as_form(form(row.at("formula_called")), form(row.at("formula_had")), 1);
    return by_mole.to_double() * std::stod(row.at("moles_had_per_mole_called"));
}

}  // namespace

TEST_CASE("equivalence_factors.csv: the exact factors to their last digit") {
    const auto rows = reference_rows("equivalence_factors.csv");
    REQUIRE(rows.size() == 14);
    for (const auto& row : rows)
        CHECK_MESSAGE(std::abs(factor(row) - std::stod(row.at("multiply_mass_by_exact_g_per_g"))) < 0.0001,
                      row.at("formula_calls_for"), " from ", row.at("you_have"), ": ", factor(row));
}

TEST_CASE("equivalence_factors.csv: the published factors to 1 %") {
    for (const auto& row : reference_rows("equivalence_factors.csv"))
        CHECK_MESSAGE(std::abs(factor(row) / std::stod(row.at("multiply_mass_by_published_g_per_g")) - 1) < 0.01,
                      row.at("formula_calls_for"), " from ", row.at("you_have"), ": ", factor(row));
}

TEST_CASE("potassium for sodium hydroxide is more, not the 0.72 that one book prints") {
    CHECK(check::as_form(form("NaOH"), form("KOH"), 1).to_double() == doctest::Approx(1.4027).epsilon(0.0001));
    CHECK(check::as_form(form("KOH"), form("NaOH"), 1).to_double() == doctest::Approx(0.7129).epsilon(0.0001));
}

TEST_CASE("30 g of anhydrous carbonate as monohydrate, with the sum to do again on paper") {
    const Workspace workspace("");
    const auto carbonate = workspace.model().chemical_names.at("sodium carbonate").first;
    const check::Addition called{.chemical = carbonate, .form = 0, .shares = {Exact(30)}};
    const check::Addition there{.chemical = carbonate, .form = 1, .shares = {Exact(1)}};
    const auto weighed = plan::weigh_as(workspace.model(), called, there);
    REQUIRE(std::holds_alternative<plan::Weighing>(weighed));
    const auto& weighing = std::get<plan::Weighing>(weighed);
    CHECK(shown(weighing.called) == "30 g");
    CHECK(shown(weighing.as) == "35.1 g");  // 30 × 124.003 / 105.988 = 35.10
    CHECK(weighing.kinship == plan::Kinship::same_species);
    CHECK(weighing.factor.to_double() == doctest::Approx(1.1700).epsilon(0.0001));
    CHECK(weighing.mol == doctest::Approx(0.28305).epsilon(0.0001));  // 30 / 105.988
    REQUIRE(weighing.lines.size() == 5);
    CHECK(plain_blanks(weighing.lines[0]) == "anhydrous, Na2CO3: 105.988 g/mol");
    CHECK(plain_blanks(weighing.lines[1]) == "monohydrate, Na2CO3·H2O: 124.003 g/mol");
    CHECK(weighing.lines[2] == "124.003 ÷ 105.988 = 1.17");
    CHECK(plain_blanks(weighing.lines[3]) == "30 g × 1.17 = 35.1 g");
}

TEST_CASE("what has no use in common with it is refused") {
    const Workspace workspace("");
    const auto& names = workspace.model().chemical_names;
    const check::Addition called{.chemical = names.at("metol").first, .form = 0, .shares = {Exact(5)}};
    const check::Addition there{.chemical = names.at("sodium hydroxide").first, .form = 0, .shares = {Exact(1)}};
    const auto weighed = plan::weigh_as(workspace.model(), called, there);
    REQUIRE(std::holds_alternative<plan::Refusal>(weighed));
    CHECK(std::get<plan::Refusal>(weighed).message.find("no use in common") != std::string::npos);
}
