// SPDX-License-Identifier: MIT
// The arithmetic of small Exact values, inline; included by exact.hpp alone.
#pragma once

#include <bit>
#include <limits>
#include <utility>

#include "scruple/quantity/exact.hpp"

namespace scruple::quantity {

namespace fast {

inline constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();

/// Greatest common divisor of two positive numbers, by halving: no division is as slow as a divide.
inline std::int64_t common_divisor(std::int64_t a, std::int64_t b) {
    if (a == 1 || b == 1) return 1;
    const int twos = std::countr_zero(static_cast<std::uint64_t>(a | b));
    a >>= std::countr_zero(static_cast<std::uint64_t>(a));
    while (b != 0) {
        b >>= std::countr_zero(static_cast<std::uint64_t>(b));
        const std::int64_t smaller = a < b ? a : b;
        b = a < b ? b - a : a - b;
        a = smaller;
    }
    return a << twos;
}

inline bool fits(__int128 value) {
    return value <= most && value >= -static_cast<__int128>(most);
}

}  // namespace fast

inline Exact::Exact(std::int64_t whole) : numerator_(whole) {
    if (whole < -fast::most) [[unlikely]]
        *this = -Exact(fast::most) - Exact(1);
}

inline Exact::Exact(std::int64_t numerator, std::int64_t denominator) {
    if (numerator >= -fast::most && denominator > 0) [[likely]]
        *this = in_lowest_terms(numerator, denominator);
    else
        *this = quotient_of_large(Exact(numerator), Exact(denominator));
}

inline Exact::Exact(const Exact& other) : numerator_(other.numerator_), denominator_(other.denominator_) {
    if (!other.is_small()) [[unlikely]]
        copy_large(*this, other);
}

inline Exact::Exact(Exact&& other) noexcept
    : numerator_(std::exchange(other.numerator_, 0)),
      denominator_(std::exchange(other.denominator_, 1)),
      large_(std::exchange(other.large_, nullptr)) {}

inline Exact& Exact::operator=(const Exact& other) {
    return *this = Exact(other);
}

inline Exact& Exact::operator=(Exact&& other) noexcept {
    std::swap(numerator_, other.numerator_);
    std::swap(denominator_, other.denominator_);
    std::swap(large_, other.large_);
    return *this;
}

inline Exact::~Exact() {
    if (!is_small()) [[unlikely]]
        drop_large();
}

/// numerator within ±INT64_MAX, denominator positive.
inline Exact Exact::in_lowest_terms(std::int64_t numerator, std::int64_t denominator) {
    Exact result;
    if (numerator == 0) return result;
    const std::int64_t shared = fast::common_divisor(numerator < 0 ? -numerator : numerator, denominator);
    result.numerator_ = shared == 1 ? numerator : numerator / shared;
    result.denominator_ = shared == 1 ? denominator : denominator / shared;
    return result;
}

/// Over the least common denominator (Knuth, The Art of Computer Programming 2, 4.5.1).
inline Exact Exact::sum(const Exact& a, const Exact& b, bool subtract) {
    if (!a.is_small() || !b.is_small()) [[unlikely]]
        return sum_of_large(a, b, subtract);
    const std::int64_t b_numerator = subtract ? -b.numerator_ : b.numerator_;
    const std::int64_t shared =
        a.denominator_ == b.denominator_ ? a.denominator_ : fast::common_divisor(a.denominator_, b.denominator_);
    const std::int64_t a_rest = shared == 1 ? a.denominator_ : a.denominator_ / shared;
    const std::int64_t b_rest = shared == 1 ? b.denominator_ : b.denominator_ / shared;
    const Wide numerator = static_cast<Wide>(a.numerator_) * b_rest + static_cast<Wide>(b_numerator) * a_rest;
    const Wide denominator = static_cast<Wide>(a_rest) * b.denominator_;
    if (!fast::fits(numerator) || !fast::fits(denominator)) [[unlikely]]
        return sum_of_large(a, b, subtract);
    return in_lowest_terms(static_cast<std::int64_t>(numerator), static_cast<std::int64_t>(denominator));
}

inline Exact operator+(const Exact& a, const Exact& b) {
    return Exact::sum(a, b, false);
}
inline Exact operator-(const Exact& a, const Exact& b) {
    return Exact::sum(a, b, true);
}

inline Exact operator*(const Exact& a, const Exact& b) {
    if (!a.is_small() || !b.is_small()) [[unlikely]]
        return Exact::product_of_large(a, b);
    // Crosswise, so that the products come out in lowest terms and seldom overflow.
    const Exact left = Exact::in_lowest_terms(a.numerator_, b.denominator_);
    const Exact right = Exact::in_lowest_terms(b.numerator_, a.denominator_);
    Exact result;
    const bool over = __builtin_mul_overflow(left.numerator_, right.numerator_, &result.numerator_) ||
                      __builtin_mul_overflow(left.denominator_, right.denominator_, &result.denominator_) ||
                      result.numerator_ < -fast::most;
    if (over) [[unlikely]]
        return Exact::product_of_large(a, b);
    return result;
}

inline Exact operator/(const Exact& a, const Exact& b) {
    if (!b.is_small() || b.numerator_ == 0) [[unlikely]]
        return Exact::quotient_of_large(a, b);
    Exact turned;
    turned.numerator_ = b.numerator_ < 0 ? -b.denominator_ : b.denominator_;
    turned.denominator_ = b.numerator_ < 0 ? -b.numerator_ : b.numerator_;
    return a * turned;
}

inline Exact Exact::operator-() const {
    return Exact() - *this;
}

inline bool operator==(const Exact& a, const Exact& b) {
    if (a.is_small() && b.is_small()) [[likely]]
        return a.numerator_ == b.numerator_ && a.denominator_ == b.denominator_;
    return Exact::compare_large(a, b) == 0;
}

inline std::strong_ordering operator<=>(const Exact& a, const Exact& b) {
    if (!a.is_small() || !b.is_small()) [[unlikely]]
        return Exact::compare_large(a, b);
    return static_cast<Exact::Wide>(a.numerator_) * b.denominator_ <=>
           static_cast<Exact::Wide>(b.numerator_) * a.denominator_;
}

}  // namespace scruple::quantity
