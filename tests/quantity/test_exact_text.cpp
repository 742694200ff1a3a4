// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdio>
#include <limits>
#include <random>

#include "scruple/quantity/exact.hpp"

using namespace scruple::quantity;

namespace {

Exact whole_of(const std::string& digits) {
    Exact value;
    for (const char c : digits) value = value * 10 + (c - '0');
    return value;
}

Exact decimal_of(const std::string& text) {
    const std::size_t point = text.find('.');
    if (point == std::string::npos) return whole_of(text);
    Exact after = whole_of(text.substr(point + 1));
    for (std::size_t i = point + 1; i < text.size(); ++i) after /= 10;
    return whole_of(text.substr(0, point)) + after;
}

Exact fraction_of(const std::string& text) {
    const std::size_t stroke = text.find('/');
    return whole_of(text.substr(0, stroke)) / whole_of(text.substr(stroke + 1));
}

/// Reads a decimal, a fraction or a mixed fraction, as the recipe language writes them.
Exact read(std::string text) {
    if (text[0] == '-') return -read(text.substr(1));
    const std::size_t blank = text.find(' ');
    if (blank != std::string::npos) return whole_of(text.substr(0, blank)) + fraction_of(text.substr(blank + 1));
    return text.find('/') == std::string::npos ? decimal_of(text) : fraction_of(text);
}

std::string printed(double value, int places) {
    char buffer[400];
    std::snprintf(buffer, sizeof buffer, "%.*f", places, value);
    return buffer;
}

}  // namespace

TEST_CASE("an exact text is a short decimal, or else a mixed fraction") {
    CHECK(exact_text(0) == "0");
    CHECK(exact_text(Exact(7, 10)) == "0.7");
    CHECK(exact_text(Exact(133, 4)) == "33.25");
    CHECK(exact_text(Exact(100, 3)) == "33 1/3");
    CHECK(exact_text(Exact(-100, 3)) == "-33 1/3");
    CHECK(exact_text(Exact(2, 3)) == "2/3");
    CHECK(exact_text(Exact(-1, 20)) == "-0.05");
    CHECK(exact_text(1200) == "1200");
    CHECK(exact_text(Exact(1, 1000000000000)) == "0.000000000001");
    CHECK(exact_text(Exact(1, 10000000000000)) == "1/10000000000000");
}

TEST_CASE("reading an exact text gives the number back, also after scaling by 3 and by 1/3") {
    std::mt19937_64 random(7);
    for (int i = 0; i < 5000; ++i) {
        const auto top = static_cast<std::int64_t>(random() >> (random() % 63 + 1));
        const auto bottom = static_cast<std::int64_t>(random() >> (random() % 63 + 1)) + 1;
        const Exact value(random() % 2 == 0 ? top : -top, bottom);
        REQUIRE(read(exact_text(value)) == value);
        const Exact third = read(exact_text(value / 3));
        REQUIRE(exact_text(third * 3) == exact_text(value));
        const Exact huge = value * value * value;
        REQUIRE(read(exact_text(huge)) == huge);
    }
}

TEST_CASE("a decimal text is rounded, without trailing zeros, with a leading zero") {
    CHECK(decimal_text(Exact(2, 3), 2) == "0.67");
    CHECK(decimal_text(Exact(5), 2) == "5");
    CHECK(decimal_text(Exact(5, 2), 2) == "2.5");
    CHECK(decimal_text(Exact(1, 1000), 2) == "0");
    CHECK(decimal_text(Exact(-1, 1000), 2) == "0");
    CHECK(decimal_text(Exact(-1, 200), 2) == "-0.01");
    CHECK(decimal_text(Exact(1, 200), 2) == "0.01");
    CHECK(decimal_text(Exact(999, 1000), 2) == "1");
    CHECK(decimal_text(Exact(12345, 10), 0) == "1235");
}

TEST_CASE("decimal texts agree with the C library's for numbers a double holds exactly") {
    std::mt19937_64 random(11);
    for (int i = 0; i < 5000; ++i) {
        const auto eighths = static_cast<std::int64_t>(random() % 2000000) - 1000000;
        const Exact value(eighths, 8);  // three places hold every eighth, so nothing is rounded
        const std::string expected = printed(value.to_double(), 3);
        REQUIRE(read(decimal_text(value, 3)) == read(expected));
        REQUIRE(decimal_text(value, 3) == exact_text(value));
    }
}

TEST_CASE("a significant text never has an exponent") {
    CHECK(significant_text(Exact(123456), 3) == "123000");
    CHECK(significant_text(Exact(1, 3), 3) == "0.333");
    CHECK(significant_text(Exact(2, 30000), 2) == "0.000067");
    CHECK(significant_text(Exact(9996, 1000), 3) == "10");
    CHECK(significant_text(Exact(1, 100), 3) == "0.01");
    CHECK(significant_text(Exact(1, 10), 1) == "0.1");
    CHECK(significant_text(Exact(95, 1000), 1) == "0.1");
    CHECK(significant_text(Exact(-28349523125, 1000000000), 4) == "-28.35");
    CHECK(significant_text(Exact(0), 4) == "0");
    CHECK(significant_text(0.0, 3) == "0");
    CHECK(significant_text(-0.0, 3) == "0");
    CHECK(significant_text(123456.0, 3) == "123000");
    CHECK(significant_text(0.000066666, 2) == "0.000067");
    CHECK(significant_text(9.996, 3) == "10");
    CHECK(significant_text(-5.0, 1) == "-5");
    CHECK(significant_text(1e20, 2) == "100000000000000000000");
}

TEST_CASE("the significant texts of a number and of its double agree") {
    std::mt19937_64 random(13);
    for (int i = 0; i < 20000; ++i) {
        const auto top = static_cast<std::int64_t>(random() % 999983 + 1);
        const auto bottom = static_cast<std::int64_t>(random() % 99991 + 1) | 1;
        const Exact value(top, bottom);  // an odd denominator has no ties but those of fives
        if (exact_text(value).find('/') == std::string::npos) continue;
        REQUIRE(significant_text(value, 4) == significant_text(value.to_double(), 4));
    }
}

TEST_CASE("a reading on an instrument has as many places as its division") {
    CHECK(division_text(Exact(5), Exact(1, 100)) == "5");
    CHECK(division_text(Exact(1234, 1000), Exact(1, 100)) == "1.23");
    CHECK(division_text(Exact(1, 4), Exact(1, 10)) == "0.3");
    CHECK(division_text(Exact(83, 10), Exact(1, 5)) == "8.4");
    CHECK(division_text(Exact(1049), Exact(100)) == "1000");
    CHECK(division_text(Exact(3, 8), Exact(1, 4)) == "0.5");
}
