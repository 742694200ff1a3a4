// SPDX-License-Identifier: MIT
#include "scruple/plan/figure.hpp"

#include <doctest/doctest.h>

using namespace scruple;
using plan::plain;
using plan::plain_grams;
using plan::plain_ml;
using quantity::Exact;

TEST_CASE("plain figures have four digits, no trailing zeros, a leading zero") {
    CHECK(plain_grams(Exact(5)).text == "5");
    CHECK(plain_grams(Exact(1, 3)).text == "0.3333");
    CHECK(plain_grams(Exact(2, 3)).text == "0.6667");
    CHECK(plain_grams(Exact(12345, 1000)).text == "12.35");
    CHECK(plain_grams(Exact(3, 1000000)).text == "0.000003");
    CHECK(plain_ml(Exact(0)).text == "0");
    CHECK(plain(Exact(12345), "ml", 2).text == "12000");
}

TEST_CASE("g and ml up to 9999, from there kg and l") {
    CHECK(plain_ml(Exact(9999)).with_unit() == "9999\u00A0ml");
    CHECK(plain_ml(Exact(10000)).with_unit() == "10\u00A0l");
    CHECK(plain_grams(Exact(12345)).with_unit() == "12.35\u00A0kg");
    CHECK(plain_grams(Exact(12345)).exact == Exact(12345, 1000));
}

TEST_CASE("the error of a figure is in percent of the exact value") {
    const auto figure = plan::grams_as_read(Exact(1, 10), Exact(8, 100));
    CHECK(figure.text == "0.1");
    CHECK(figure.error_percent == doctest::Approx(25));
    CHECK(plan::ml_as_read(Exact(9), Exact(10)).error_percent == doctest::Approx(10));
}
