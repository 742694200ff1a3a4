// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "scruple/chemistry/formula.hpp"
#include "support/csv.hpp"

using namespace scruple::chemistry;
using scruple::quantity::decimal_text;
using scruple::quantity::Exact;
using scruple::quantity::exact_text;
using What = FormulaFault::What;

namespace {

Formula formula(std::string_view text) {
    const auto read = read_formula(text);
    REQUIRE_MESSAGE(std::holds_alternative<Formula>(read), text);
    return std::get<Formula>(read);
}

/// The counts of a formula in words: `Ca 1, H 1, O 4.5, S 1`, then water and charge.
std::string said(std::string_view text) {
    const Formula read = formula(text);
    std::string result;
    for (const auto& [element, atoms] : read.atoms)
        result += std::string(result.empty() ? "" : ", ") + std::string(symbol(element)) + ' ' + exact_text(atoms);
    if (!read.water.is_zero()) result += "; water " + exact_text(read.water);
    if (read.charge != 0) result += "; charge " + std::to_string(read.charge);
    return result;
}

FormulaFault fault(std::string_view text) {
    const auto read = read_formula(text);
    REQUIRE_MESSAGE(std::holds_alternative<FormulaFault>(read), text);
    return std::get<FormulaFault>(read);
}

void refused(std::string_view text, What what, std::size_t at, std::string_view found) {
    CAPTURE(text);
    const FormulaFault seen = fault(text);
    CHECK(seen.what == what);
    CHECK(seen.at == at);
    CHECK(seen.found == found);
}

}  // namespace

TEST_CASE("water of crystallisation is taken away, and no nought is left") {
    const auto read = [](std::string_view text) { return std::get<Formula>(read_formula(text)); };
    CHECK(without_water(read("Na2CO3·10H2O")) == read("Na2CO3"));
    CHECK(without_water(read("CaSO4·½H2O")) == read("CaSO4"));
    CHECK(without_water(read("NaCl·2H2O")) == read("NaCl"));
    CHECK(without_water(read("H2O")) == read("H2O"));
}

TEST_CASE("elements, counts and brackets") {
    CHECK(said("NaCl") == "Na 1, Cl 1");
    CHECK(said("Co") == "Co 1");
    CHECK(said("CO") == "C 1, O 1");
    CHECK(said("C6H6O2") == "H 6, C 6, O 2");
    CHECK(said("CH3COONa") == "H 3, C 2, O 2, Na 1");
    CHECK(said("(NH4)2S2O8") == "H 8, N 2, O 8, S 2");
    CHECK(said("K4[Fe(CN)6]") == "C 6, N 6, K 4, Fe 1");
    CHECK(said("Na2S₂O₃") == "O 3, Na 2, S 2");
    CHECK(said("((CH3)2N)2") == "H 12, C 4, N 2");
    CHECK(said("(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)(H)") == "H 20");
}

TEST_CASE("water of crystallisation and other adducts, behind any of the dots") {
    const std::string soda = "H 20, C 1, O 13, Na 2; water 10";
    for (const std::string_view text : {"Na2CO3·10H2O", "Na2CO3.10H2O", "Na2CO3*10H2O", "Na₂CO₃·10H₂O"})
        CHECK(said(text) == soda);
    CHECK(said("Na2CO3·H2O") == "H 2, C 1, O 4, Na 2; water 1");
    CHECK(said("CaSO4·1/2H2O") == "H 1, O 4.5, S 1, Ca 1; water 0.5");
    for (const std::string_view text : {"CaSO4·½H2O", "CaSO4·0.5H2O", "CaSO4.0.5H2O", "CaSO4*1/2H2O"})
        CHECK(formula(text) == formula("CaSO4·1/2H2O"));
    CHECK(formula("K2CO3·1½H2O") == formula("K2CO3·1.5H2O"));
    CHECK(formula("K2CO3·3/2H2O") == formula("K2CO3.1.5H2O"));
    CHECK(said("CdSO4·8/3H2O") == "H 5 1/3, O 6 2/3, S 1, Cd 1; water 2 2/3");
    CHECK(said("C6H8N2O·2HCl") == "H 10, C 6, N 2, O 1, Cl 2");
    CHECK(said("(C7H9NO)2·H2SO4") == "H 20, C 14, N 2, O 6, S 1");
    CHECK(said("MgSO4·7H2O·2NaCl") == "H 14, O 11, Na 2, Mg 1, S 1, Cl 2; water 7");
    CHECK(said("H2O") == "H 2, O 1");
}

TEST_CASE("charges: a sign and digits, or superscripts") {
    CHECK(said("Na+") == "Na 1; charge 1");
    CHECK(said("NH4+") == "H 4, N 1; charge 1");
    CHECK(said("HSO3-") == "H 1, O 3, S 1; charge -1");
    CHECK(said("B(OH)4-") == "H 4, B 1, O 4; charge -1");
    CHECK(said("CO3-2") == "C 1, O 3; charge -2");
    CHECK(said("Fe+3") == "Fe 1; charge 3");
    CHECK(said("Hg2+2") == "Hg 2; charge 2");
    CHECK(said("I3-1") == "I 3; charge -1");
    CHECK(said("[Fe(CN)6]-4") == "C 6, N 6, Fe 1; charge -4");
    for (const std::string_view text : {"CO₃²⁻", "CO3²⁻", "CO3⁻²", "CO₃⁻²", "CO3-²", "CO3−2"})
        CHECK(formula(text) == formula("CO3-2"));
    CHECK(formula("Fe³⁺") == formula("Fe+3"));
    CHECK(formula("S₂O₃²⁻") == formula("S2O3-2"));
    CHECK(formula("I₃⁻") == formula("I3-1"));
    CHECK(said("C10H12N2O8-4") == "H 12, C 10, N 2, O 8; charge -4");
}

TEST_CASE("digits and then a sign, where they read as atoms or as charge, are refused") {
    refused("CO32-", What::charge_both_ways, 2, "32-");
    refused("SO42-", What::charge_both_ways, 2, "42-");
    refused("Fe2+", What::charge_both_ways, 2, "2+");
    refused("S2-", What::charge_both_ways, 1, "2-");
    refused("[Fe(CN)6]4-", What::charge_both_ways, 9, "4-");
    refused("Fe(CN)63-", What::charge_both_ways, 6, "63-");
}

TEST_CASE("what cannot be read says why and where") {
    refused("", What::empty, 0, "");
    refused("Xx2O", What::unknown_element, 0, "Xx");
    refused("NaOh", What::unknown_element, 2, "Oh");
    refused("Sodium", What::unknown_element, 0, "Sodium");
    refused("Na2(SO4", What::unbalanced_bracket, 3, "(");
    refused("Na2SO4)", What::unbalanced_bracket, 6, ")");
    refused("K4[Fe(CN)6)", What::unbalanced_bracket, 10, ")");
    refused(")", What::unbalanced_bracket, 0, ")");
    refused("Na()2", What::unexpected, 3, ")");
    refused("2NaCl", What::unexpected, 0, "2");
    refused("na", What::unexpected, 0, "n");
    refused("Na 2", What::unexpected, 2, " ");
    refused("Na0", What::unexpected, 2, "0");
    refused("Na+0", What::unexpected, 2, "+0");
    refused("Na+Cl", What::unexpected, 3, "C");
    refused("Na2CO3·", What::unexpected, 8, "");
    refused("Na2CO3·0H2O", What::unexpected, 8, "0");
    refused("Na2CO3·1/0H2O", What::unexpected, 8, "1/0");
    refused("Na2CO3×10H2O", What::unexpected, 6, "×");
    refused("Na2²", What::unexpected, 5, "");
    refused("Na₂2", What::unexpected, 5, "2");
    refused("Na\xFF", What::unexpected, 2, "\xFF");
    refused(std::string_view("Na\0", 3), What::unexpected, 2, std::string_view("\0", 1));
}

TEST_CASE("numbers and brackets past any substance are too large") {
    CHECK(fault("H100001").what == What::too_large);
    CHECK(fault("H99999999999999999999999999").what == What::too_large);
    CHECK(fault("((H1000)1000)1000").what == What::too_large);
    CHECK(fault("H2O·1/99999999999H2O").what == What::too_large);
    CHECK(fault("Na+99999999999").what == What::too_large);
    CHECK(fault(std::string(500, '(') + "H" + std::string(500, ')')).what == What::too_large);
    CHECK(fault(std::string(100000, 'H')).what == What::too_large);
    CHECK(fault(std::string(100000, '(')).what == What::too_large);
}

TEST_CASE("any mutilated formula is read or refused, with the place inside the text") {
    const std::string_view pieces[] = {"Na", "2", "CO", "3", "·", ".", "½", "(",    ")", "[", "]",    "+",
                                       "-",  "²", "⁻",  "H", "/", "0", "e", "\xC2", "₂", "*", "\xF0", "I"};
    std::mt19937 random(5);
    int good = 0, bad = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (unsigned length = random() % 10; length > 0; --length) text += pieces[random() % std::size(pieces)];
        const auto read = read_formula(text);
        if (const auto* refused = std::get_if<FormulaFault>(&read)) {
            ++bad;
            REQUIRE(refused->at <= text.size());
            REQUIRE(text.substr(refused->at, refused->found.size()) == refused->found);
        } else {
            ++good;
            REQUIRE(molar_mass(std::get<Formula>(read)) > 0);
        }
    }
    CHECK(good > 100);
    CHECK(bad > 100);
}

TEST_CASE("molar_masses.csv: within 0.005 g/mol") {
    const auto rows = scruple::test::reference_rows("molar_masses.csv");
    REQUIRE(rows.size() == 59);
    for (const auto& row : rows) {
        const double expected = std::stod(row.at("molar_mass_g_per_mol"));
        const double seen = molar_mass(formula(row.at("formula"))).to_double();
        CHECK_MESSAGE(std::abs(seen - expected) < 0.005, row.at("compound"), ": ", seen, " and not ", expected);
    }
}

TEST_CASE("atomic_weights.csv: the abridged weights, digit for digit") {
    const auto rows = scruple::test::reference_rows("atomic_weights.csv");
    REQUIRE(rows.size() == 33);
    for (const auto& row : rows) {
        const Exact weight = molar_mass(formula(row.at("element")));
        CHECK_MESSAGE(exact_text(weight) == row.at("abridged_5digit_2021_dimensionless"), row.at("element"));
    }
}

TEST_CASE("atomic_weights.csv: how far a weight may be off covers the interval of the full table") {
    std::size_t intervals = 0;
    for (const auto& row : scruple::test::reference_rows("atomic_weights.csv")) {
        const std::string& full = row.at("standard_atomic_weight_2021_dimensionless");
        if (full.empty() || full.front() != '[') continue;
        const auto one = formula(row.at("element"));
        const double weight = molar_mass(one).to_double(), off = molar_mass_off(one) * weight;
        const double low = std::stod(full.substr(1)), high = std::stod(full.substr(full.find(',') + 1));
        CHECK_MESSAGE(weight - off <= low, row.at("element"));
        CHECK_MESSAGE(weight + off >= high, row.at("element"));
        CHECK_MESSAGE(off < 3 * std::max(weight - low, high - weight), row.at("element"));
        ++intervals;
    }
    CHECK(intervals == 9);
}

TEST_CASE("a molar mass is off by its elements, by the root of the sum of squares") {
    // NaCl: the root of 0.001² + 0.01² over 58.44 (IUPAC 2021; ± from memory).
    CHECK(molar_mass_off(formula("NaCl")) == doctest::Approx(0.0100499 / 58.44).epsilon(1e-4));
    CHECK(molar_mass_off(formula("Na2B4O7")) ==
          doctest::Approx(std::hypot(0.002, 0.08, 0.007) / 201.217).epsilon(1e-3));
}
