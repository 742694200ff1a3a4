// SPDX-License-Identifier: MIT
// Exact against boost::multiprecision::cpp_rational, over random and extreme values.
#include <doctest/doctest.h>

#include <boost/multiprecision/cpp_int.hpp>
#include <limits>
#include <random>
#include <stdexcept>

#include "scruple/quantity/exact.hpp"

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;
using scruple::quantity::Exact;

namespace {

constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();

/// The same value twice: as the program holds it, and as Boost does.
struct Pair {
    Exact exact;
    cpp_rational boost;
};

Pair ratio(std::int64_t numerator, std::int64_t denominator) {
    return {Exact(numerator, denominator), cpp_rational(numerator) / cpp_rational(denominator)};
}

/// Numbers of all lengths in bits, and the ends of the range more often than chance would have them.
class Values {
  public:
    Pair next() {
        const std::int64_t numerator = whole();
        std::int64_t denominator = whole();
        while (denominator == 0) denominator = whole();
        return ratio(numerator, denominator);
    }

  private:
    std::int64_t whole() {
        static constexpr std::int64_t ends[] = {0, 1, -1, 10, 1000, most, -most, least, least + 2, most - 1};
        if (random_() % 4 == 0) return ends[random_() % std::size(ends)];
        const auto bits = static_cast<std::int64_t>(random_() >> (random_() % 64));
        return random_() % 2 == 0 ? bits : static_cast<std::int64_t>(-static_cast<std::uint64_t>(bits));
    }

    std::mt19937_64 random_{20210};  // one seed, so that a failure can be seen again
};

void same(const Exact& exact, const cpp_rational& boost) {
    REQUIRE(exact.ratio_text() == boost.str());
}

cpp_int floor_of(const cpp_rational& value) {
    cpp_int cut = numerator(value) / denominator(value);
    if (value < cut) --cut;
    return cut;
}

}  // namespace

TEST_CASE("the four operations agree with Boost.Multiprecision") {
    Values values;
    for (int i = 0; i < 5000; ++i) {
        const Pair a = values.next(), b = values.next(), c = values.next();
        same(a.exact, a.boost);
        same(a.exact + b.exact, a.boost + b.boost);
        same(a.exact - b.exact, a.boost - b.boost);
        same(a.exact * b.exact, a.boost * b.boost);
        if (b.boost != 0) same(a.exact / b.exact, a.boost / b.boost);
        same(-a.exact, -a.boost);
        same(a.exact * b.exact + c.exact, a.boost * b.boost + c.boost);
    }
}

TEST_CASE("order, floor and ceiling agree with Boost.Multiprecision") {
    Values values;
    for (int i = 0; i < 5000; ++i) {
        const Pair a = values.next(), b = values.next();
        REQUIRE((a.exact < b.exact) == (a.boost < b.boost));
        REQUIRE((a.exact == b.exact) == (a.boost == b.boost));
        REQUIRE(((a.exact * b.exact) <=> a.exact) == (cpp_rational(a.boost * b.boost).compare(a.boost) <=> 0));
        same(a.exact.floor(), floor_of(a.boost));
        same(a.exact.ceil(), -floor_of(-a.boost));
        REQUIRE(a.exact.is_whole() == (denominator(a.boost) == 1));
        REQUIRE(a.exact.is_zero() == (a.boost == 0));
    }
}

TEST_CASE("a double is as near as two roundings of the parts and one of the quotient allow") {
    Values values;
    for (int i = 0; i < 5000; ++i) {
        const Pair a = values.next(), b = values.next();
        REQUIRE(a.exact.to_double() == doctest::Approx(a.boost.convert_to<double>()).epsilon(4e-16));
        const double product = (a.boost * b.boost).convert_to<double>();
        REQUIRE((a.exact * b.exact).to_double() == doctest::Approx(product).epsilon(4e-16));
    }
}

TEST_CASE("what outgrows two words comes back to the same value") {
    Values values;
    for (int i = 0; i < 5000; ++i) {
        const Pair a = values.next(), b = values.next();
        REQUIRE(a.exact + b.exact - b.exact == a.exact);
        if (!b.exact.is_zero()) {
            REQUIRE(a.exact * b.exact / b.exact == a.exact);
            REQUIRE(a.exact / b.exact * b.exact == a.exact);
        }
    }
}

TEST_CASE("the ends of the machine word are ordinary numbers") {
    CHECK(Exact(least).ratio_text() == "-9223372036854775808");
    CHECK((-Exact(least)).ratio_text() == "9223372036854775808");
    CHECK(Exact(least, least) == Exact(1));
    CHECK(Exact(least, -1).ratio_text() == "9223372036854775808");
    CHECK(Exact(1, least).ratio_text() == "-1/9223372036854775808");
    CHECK(Exact(3, -6).ratio_text() == "-1/2");
    CHECK((Exact(most) + 1) - 1 == Exact(most));
    CHECK((Exact(least) * Exact(least)).ratio_text() == "85070591730234615865843651857942052864");
}

TEST_CASE("copies and moves of small and large values stand alone") {
    const Exact large = Exact(most) * Exact(most);
    Exact copy = large;
    copy += 1;
    CHECK(copy - large == Exact(1));
    Exact moved = std::move(copy);
    CHECK(moved == large + 1);
    const Exact& itself = moved;
    moved = itself;
    CHECK(moved == large + 1);
    moved = Exact(2, 3);
    CHECK(moved.ratio_text() == "2/3");
    moved = large;
    CHECK(moved == large);
}

TEST_CASE("dividing by zero is refused by name") {
    CHECK_THROWS_AS(Exact(1) / Exact(0), std::domain_error);
    CHECK_THROWS_AS(Exact(1, 0), std::domain_error);
    CHECK_THROWS_AS(Exact(most) * Exact(most) / Exact(0), std::domain_error);
}

TEST_CASE("rounding to a step takes the nearest multiple, ties away from zero") {
    CHECK(Exact(125, 100).rounded_to(Exact(1, 10)) == Exact(13, 10));
    CHECK(Exact(-125, 100).rounded_to(Exact(1, 10)) == Exact(-13, 10));
    CHECK(Exact(124, 100).rounded_to(Exact(1, 10)) == Exact(12, 10));
    CHECK(Exact(7).rounded_to(5) == Exact(5));
    CHECK(Exact(8).rounded_to(5) == Exact(10));
    CHECK(Exact(1, 3).rounded_to(Exact(1, 6)) == Exact(1, 3));
    CHECK((Exact(most) * Exact(most)).rounded_to(Exact(most)) == Exact(most) * Exact(most));
    CHECK((Exact(most) + Exact(1, 2)).rounded_to(1).ratio_text() == "9223372036854775808");
}

TEST_CASE("scaling by three and by a third gives the same number back") {
    Values values;
    for (int i = 0; i < 2000; ++i) {
        const Exact value = values.next().exact;
        REQUIRE(value * 3 * Exact(1, 3) == value);
        REQUIRE(value / 7 * 7 == value);
    }
}
