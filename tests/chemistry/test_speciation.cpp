// SPDX-License-Identifier: MIT
// pH against a geochemical program, with its constants; and what must hold of any solution.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "shelf.hpp"
#include "support/csv.hpp"

using namespace scruple::chemistry;
using scruple::test::reference_rows;
using scruple::test::Shelf;

namespace {

/// `Na=0.79865; Sfi=0.39933`
std::map<std::string, double> totals_of(const std::string& text) {
    std::map<std::string, double> totals;
    for (std::size_t at = 0; at < text.size();) {
        const auto equals = text.find('=', at);
        const auto end = std::min(text.find(';', equals), text.size());
        totals[text.substr(at, equals - at)] = std::stod(text.substr(equals + 1, end - equals - 1));
        at = end + 2;
    }
    return totals;
}

constexpr const char* henry = "CO2(g) Henry: log K for CO2(g)=CO2(aq), mol/kg/atm/0";

void check_balances(const Speciation& found) {
    CHECK(found.converged);
    CHECK(found.charge_residual < 1e-9);
    CHECK(found.mass_residual < 1e-9);
}

}  // namespace

TEST_CASE("pH as PHREEQC 3 gives it by the specific ion interaction theory, over the same constants") {
    // Source: tests/reference/phreeqc_pH.csv, computed with PHREEQC 3; constants of pKa_25C.csv and
    // sit_coefficients.csv, some of them recalled.
    const Shelf shelf;
    for (auto& row : reference_rows("phreeqc_pH.csv")) {
        const auto totals = totals_of(row["molality_used_mol_per_kg"]);
        const double celsius = std::stod(row["temperature_C"]);
        auto mixture = shelf.mixture(totals, celsius);
        if (row["solution"].find("degassed") != std::string::npos) {
            const auto gas = shelf.index_of(totals, "CO2");
            mixture.held = Held{gas, std::pow(10, shelf.log_k_at(henry, celsius) - 3.38)};
        }
        const auto found = speciate(mixture);
        CAPTURE(row["solution"]);
        CAPTURE(celsius);
        check_balances(found);
        CHECK(std::abs(found.ph - std::stod(row["pH_phreeqc_SIT"])) < 0.05);
        CHECK(std::abs(found.ionic_strength - std::stod(row["ionic_strength_mol_per_kg"])) < 0.005);
    }
}

TEST_CASE("water alone is neutral, and strong acids and alkalis are what they are") {
    const Shelf shelf;
    // pKw 13.997 at 25 °C (NIST46): half of it.
    CHECK(speciate(shelf.mixture({}, 25)).ph == doctest::Approx(6.9985).epsilon(1e-6));
    // By hand: H+ of 0.01 mol/kg with Cl-, D = 0.510 * 0.1 / 1.15, ε = 0.12.
    const double gamma = std::pow(10, -0.5100 * 0.1 / 1.15 + 0.12 * 0.01);
    CHECK(speciate(shelf.mixture({{"Cl", 0.01}}, 25)).ph == doctest::Approx(-std::log10(0.01 * gamma)).epsilon(1e-4));
    // An acid so thin that water decides.
    CHECK(speciate(shelf.mixture({{"Cl", 1e-10}}, 25)).ph == doctest::Approx(6.998).epsilon(1e-4));
}

TEST_CASE("a gas that is held keeps its activity") {
    const Shelf shelf;
    const std::map<std::string, double> totals{{"Na", 0.1}, {"C", 0.1}};
    auto mixture = shelf.mixture(totals, 25);
    const auto gas = shelf.index_of(totals, "CO2");
    mixture.held = Held{gas, 1.4e-5};
    const auto found = speciate(mixture);
    check_balances(found);
    CHECK(found.molality[gas] * std::pow(10, found.log_gamma[gas]) == doctest::Approx(1.4e-5).epsilon(1e-9));
}

TEST_CASE("every mixture comes to rest, and its charges and masses balance") {
    const Shelf shelf;
    const std::vector<std::string> names{"Na", "Cl", "C", "Sfi", "B", "P", "Acet", "Citr", "Asc"};
    std::mt19937 random(20261126);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same mixtures each time
    std::uniform_real_distribution<double> magnitude(std::log(1e-6), std::log(30.0));
    std::uniform_real_distribution<double> celsius(0, 60);
    for (int i = 0; i < 20000; ++i) {
        std::map<std::string, double> totals;
        for (const auto& name : names)
            if (random() % 2 == 0) totals[name] = std::exp(magnitude(random));
        const auto found = speciate(shelf.mixture(totals, celsius(random)));
        REQUIRE(found.converged);
        REQUIRE(found.charge_residual < 1e-9);
        REQUIRE(found.mass_residual < 1e-9);
    }
}

TEST_CASE("the Debye-Hückel constant") {
    // 0.509 at 25 °C in the guidelines of the NEA Thermochemical Database, recalled; a later dielectric constant gives
    // 0.510. 0.491 at 0 °C and 0.534 at 50 °C: Helgeson & Kirkham 1974, recalled.
    CHECK(debye_hueckel_a(25) == doctest::Approx(0.509).epsilon(0.003));
    CHECK(debye_hueckel_a(0) == doctest::Approx(0.491).epsilon(0.003));
    CHECK(debye_hueckel_a(50) == doctest::Approx(0.534).epsilon(0.003));
    // densities.csv: 0.99705 at 25 °C, CRC and IAPWS, recalled.
    CHECK(water_density(25) == doctest::Approx(0.99705).epsilon(1e-5));
}

TEST_CASE("a pK against temperature") {
    // pKw of water: 14.95 at 0 °C and 13.54 at 40 °C, from the CRC Handbook, recalled; enthalpy and heat capacity of
    // Goldberg, Kishore & Lennen 2002, recalled.
    const Constant water{.pk = 13.995, .enthalpy = 55.81, .heat_capacity = -224};
    CHECK(pk_at(water, 25) == doctest::Approx(13.995));
    CHECK(std::abs(pk_at(water, 0) - 14.95) < 0.02);
    CHECK(std::abs(pk_at(water, 40) - 13.54) < 0.02);
    CHECK(pk_at({.pk = 4.1}, 40) == doctest::Approx(4.1));
}

TEST_CASE("how much of the charge meets no known interaction") {
    // By hand: each ion counts by its charge, and meets those of the other sign.
    const Shelf shelf;
    auto salt = shelf.mixture({{"Na", 0.1}, {"Cl", 0.1}}, 25);
    CHECK(speciate(salt).davies_share < 1e-5);
    salt.interactions.clear();
    CHECK(speciate(salt).davies_share == doctest::Approx(1));

    const std::map<std::string, double> totals{{"Na", 0.2}, {"Cl", 0.1}, {"Acet", 0.1}};
    auto two = shelf.mixture(totals, 25);
    const auto sodium = shelf.index_of(totals, "Na+");
    const auto chloride = shelf.index_of(totals, "Cl-");
    std::erase_if(two.interactions, [&](const Interaction& it) {
        return !((it.one == sodium && it.other == chloride) || (it.one == chloride && it.other == sodium));
    });
    REQUIRE(two.interactions.size() == 1);
    // Of sodium's 0.2 half meets acetate, of chloride's 0.1 none, of acetate's 0.1 all: 0.2 of 0.4.
    CHECK(speciate(two).davies_share == doctest::Approx(0.5).epsilon(1e-3));
}
