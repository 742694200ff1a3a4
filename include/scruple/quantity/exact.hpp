// SPDX-License-Identifier: MIT
// Exact rational numbers: nothing is rounded until a figure is printed.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace scruple::quantity {

namespace fast {
struct Ratio;
}

/// A rational number in lowest terms. Small ones are two machine words; what
/// does not fit there is carried by Boost.Multiprecision, so no sum ever overflows.
/// Dividing by zero throws std::domain_error.
class Exact {
  public:
    Exact() = default;
    Exact(std::int64_t whole);  // NOLINT(google-explicit-constructor): a whole number is an Exact
    Exact(std::int64_t numerator, std::int64_t denominator);  ///< denominator must not be 0
    Exact(const Exact& other);
    Exact(Exact&& other) noexcept;
    Exact& operator=(const Exact& other);
    Exact& operator=(Exact&& other) noexcept;
    ~Exact();

    friend Exact operator+(const Exact& a, const Exact& b);
    friend Exact operator-(const Exact& a, const Exact& b);
    friend Exact operator*(const Exact& a, const Exact& b);
    friend Exact operator/(const Exact& a, const Exact& b);  ///< b must not be 0
    Exact operator-() const;
    Exact& operator+=(const Exact& b) { return *this = *this + b; }
    Exact& operator-=(const Exact& b) { return *this = *this - b; }
    Exact& operator*=(const Exact& b) { return *this = *this * b; }
    Exact& operator/=(const Exact& b) { return *this = *this / b; }
    friend bool operator==(const Exact& a, const Exact& b);
    friend std::strong_ordering operator<=>(const Exact& a, const Exact& b);

    [[nodiscard]] bool is_zero() const { return is_small() && numerator_ == 0; }
    [[nodiscard]] bool is_whole() const;
    [[nodiscard]] double to_double() const;
    [[nodiscard]] Exact floor() const;
    [[nodiscard]] Exact ceil() const;
    /// The nearest multiple of `step` (> 0); a tie goes away from zero.
    [[nodiscard]] Exact rounded_to(const Exact& step) const;
    /// `n/d` in lowest terms, `n` alone where d is 1.
    [[nodiscard]] std::string ratio_text() const;

  private:
    struct Large;
    using Wide = __int128;

    explicit Exact(const fast::Ratio& lowest);
    static Exact sum(const Exact& a, const Exact& b, bool subtract);
    static Exact sum_of_large(const Exact& a, const Exact& b, bool subtract);
    static Exact product_of_large(const Exact& a, const Exact& b);
    static Exact quotient_of_large(const Exact& a, const Exact& b);
    static std::strong_ordering compare_large(const Exact& a, const Exact& b);
    Exact& copy_large(const Exact& from);
    Exact& move_large(Exact& from) noexcept;
    static void drop(Large* large);
    [[nodiscard]] double double_of_large() const;
    [[nodiscard]] bool is_small() const { return denominator_ != 0; }

    // Small values keep |numerator| and the denominator (> 0) within INT64_MAX, so that
    // either can change sign; INT64_MIN is a large value. Those stand elsewhere, and have no denominator here.
    union {
        std::int64_t numerator_ = 0;
        Large* large_;  // owned
    };
    std::int64_t denominator_ = 1;
};

/// |value|.
[[nodiscard]] inline Exact magnitude(const Exact& value) {
    return value < 0 ? -value : value;
}

/// A short decimal where the value has one (`0.7`, `33.25`), else a mixed
/// fraction (`33 1/3`). Reading the text back gives the same number.
[[nodiscard]] std::string exact_text(const Exact& value);

/// Rounded to `places` (0 to 30) after the point, trailing zeros dropped, with a leading zero.
[[nodiscard]] std::string decimal_text(const Exact& value, int places);

/// Rounded to `digits` (1 to 15) significant figures, trailing zeros dropped, never in exponent form.
/// A double must be finite.
[[nodiscard]] std::string significant_text(const Exact& value, int digits);
[[nodiscard]] std::string significant_text(double value, int digits);

/// Rounded to a multiple of `division`, with as many places as the division has (5.00 by 0.01 is `5`).
[[nodiscard]] std::string division_text(const Exact& value, const Exact& division);

}  // namespace scruple::quantity

#include "scruple/quantity/exact_fast.hpp"
