// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <limits>

#include "scruple/chemistry/formula.hpp"

using namespace scruple::chemistry;
using scruple::quantity::exact_text;

namespace {

Term term(std::int32_t coefficient, std::string_view text) {
    return {coefficient, std::get<Formula>(read_formula(text))};
}

std::string said(const Imbalance& imbalance) {
    std::string result;
    for (const auto& [element, surplus] : imbalance.elements)
        result += std::string(symbol(element)) + ' ' + exact_text(surplus) + "; ";
    return result + "charge " + std::to_string(imbalance.charge);
}

}  // namespace

TEST_CASE("reactions that balance") {
    // Textbook equations; the counts are checked by hand.
    CHECK(imbalance({term(1, "Na2B4O7·10H2O"), term(2, "NaOH")}, {term(4, "NaBO2"), term(11, "H2O")}).balanced());
    CHECK(imbalance({term(1, "C6H8O7"), term(3, "NaHCO3")}, {term(1, "C6H5Na3O7"), term(3, "CO2"), term(3, "H2O")})
              .balanced());
    CHECK(imbalance({term(1, "CO3-2"), term(2, "H+")}, {term(1, "CO2"), term(1, "H2O")}).balanced());
    CHECK(imbalance({term(2, "S2O3-2"), term(1, "I2")}, {term(1, "S4O6-2"), term(2, "I-")}).balanced());
    CHECK(imbalance({term(2, "CaSO4·½H2O"), term(3, "H2O")}, {term(2, "CaSO4·2H2O")}).balanced());
    CHECK(imbalance({}, {}).balanced());
}

TEST_CASE("what a reaction has too much of, right less left") {
    CHECK(said(imbalance({term(1, "Na2B4O7·10H2O"), term(2, "NaOH")}, {term(4, "NaBO2"), term(10, "H2O")})) ==
          "H -2; O -1; charge 0");
    CHECK(said(imbalance({term(1, "CO3-2"), term(1, "H+")}, {term(1, "CO2"), term(1, "H2O")})) == "H 1; charge 1");
    CHECK(said(imbalance({term(1, "CaSO4·½H2O")}, {term(1, "CaSO4")})) == "H -1; O -0.5; charge 0");
    CHECK_FALSE(imbalance({term(1, "Fe+2")}, {term(1, "Fe+3")}).balanced());
}

TEST_CASE("coefficients as large as they come do not overflow") {
    constexpr std::int32_t most = std::numeric_limits<std::int32_t>::max();
    const Imbalance off = imbalance({}, {term(most, "H100000"), term(most, "Na+100000")});
    CHECK(off.charge == most);
    CHECK(exact_text(off.elements.front().surplus) == "214748364700000");
}
