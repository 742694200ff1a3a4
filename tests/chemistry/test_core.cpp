// SPDX-License-Identifier: MIT
// Which species are one thing in more or less acid water. Acid and base pairs, hydrolysis and oxidation numbers are
// those of any textbook of inorganic chemistry, recalled.
#include <doctest/doctest.h>

#include "scruple/chemistry/core.hpp"

using namespace scruple::chemistry;
using scruple::quantity::Exact;

namespace {

std::optional<Cores> cores(std::string_view text) {
    return cores_of(std::get<Formula>(read_formula(text)));
}

/// How many of the cores of `b` one of `a` holds; 0 where they are different things.
Exact times(std::string_view a, std::string_view b) {
    const auto one = cores(a), other = cores(b);
    return one && other && one->core == other->core ? one->count / other->count : Exact(0);
}

}  // namespace

TEST_CASE("an acid and its ions are one") {
    for (const auto& two : {std::pair("HCO3-", "CO3-2"),
                            {"CO2", "CO3-2"},
                            {"HSO3-", "SO3-2"},
                            {"SO2", "SO3-2"},
                            {"B(OH)3", "BO2-"},
                            {"H2PO4-", "PO4-3"},
                            {"NH4+", "NH3"},
                            {"HSO4-", "SO4-2"},
                            {"CH3COOH", "CH3COO-"},
                            {"C6H8O7", "C6H5O7-3"},
                            {"C10H16N2O8", "C10H12N2O8-4"}})
        CHECK_MESSAGE(times(two.first, two.second) == Exact(1), two.first, " ", two.second);
}

TEST_CASE("what water takes apart counts as so many") {
    CHECK(times("S2O5-2", "HSO3-") == Exact(2));
    CHECK(times("B4O7-2", "BO2-") == Exact(4));
    CHECK(times("Cr2O7-2", "CrO4-2") == Exact(2));
    CHECK(times("Na2B4O7·10H2O", "Na2B4O7") == Exact(1));
}

TEST_CASE("what differs by more than water and hydrogen ions is not one") {
    for (const auto& two : {std::pair("SO3-2", "SO4-2"),
                            {"S2O3-2", "SO3-2"},
                            {"Fe+2", "Fe+3"},
                            {"Na+", "K+"},
                            {"Fe(CN)6-3", "Fe(CN)6-4"},
                            {"P2O7-4", "PO4-3"},
                            {"H2O2", "O2"},
                            {"S2O8-2", "SO4-2"},
                            {"C6H8O6", "C6H8O7"},
                            {"CH2O", "CO2"},
                            {"Br-", "Cl-"}})
        CHECK_MESSAGE(times(two.first, two.second) == Exact(0), two.first, " ", two.second);
}

TEST_CASE("water and its ions are nothing") {
    for (const auto text : {"H2O", "H+", "OH-", "H3O+"}) CHECK_FALSE(cores(text).has_value());
}
