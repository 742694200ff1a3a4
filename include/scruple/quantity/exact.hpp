// SPDX-License-Identifier: MIT
// Exact rational numbers: nothing is rounded until a figure is printed.
#pragma once

#include <compare>
#include <cstdint>
#include <memory>
#include <string>

namespace scruple::quantity {

/// A rational number in lowest terms. Small ones are two machine words; what
/// does not fit there is carried by Boost.Multiprecision, so no sum ever overflows.
class Exact {
  public:
    Exact() = default;
    Exact(std::int64_t whole) : numerator_(whole) {}  // NOLINT(google-explicit-constructor): a whole number is an Exact
    Exact(std::int64_t numerator, std::int64_t denominator);  ///< denominator must not be 0
    Exact(const Exact& other);
    Exact(Exact&&) noexcept;
    Exact& operator=(const Exact& other);
    Exact& operator=(Exact&&) noexcept;
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

    [[nodiscard]] bool is_zero() const;
    [[nodiscard]] double to_double() const;
    [[nodiscard]] Exact floor() const;
    [[nodiscard]] Exact ceil() const;
    /// The nearest multiple of `step` (> 0); a tie goes away from zero.
    [[nodiscard]] Exact rounded_to(const Exact& step) const;
    /// `n/d` in lowest terms, `n` alone where d is 1.
    [[nodiscard]] std::string ratio_text() const;

    struct Large;

  private:
    std::int64_t numerator_ = 0;
    std::int64_t denominator_ = 1;
    std::unique_ptr<Large> large_;  ///< holds the value when it does not fit the two words
};

/// A short decimal where the value has one (`0.7`, `33.25`), else a mixed
/// fraction (`33 1/3`). Reading the text back gives the same number.
[[nodiscard]] std::string exact_text(const Exact& value);

/// Rounded to `places` after the point, trailing zeros dropped, with a leading zero.
[[nodiscard]] std::string decimal_text(const Exact& value, int places);

/// Rounded to `digits` significant figures, never in exponent form.
[[nodiscard]] std::string significant_text(const Exact& value, int digits);
[[nodiscard]] std::string significant_text(double value, int digits);

/// Rounded to a multiple of `division`, with as many places as the division has (5.00 by 0.01 is `5`).
[[nodiscard]] std::string division_text(const Exact& value, const Exact& division);

}  // namespace scruple::quantity
