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

/// A numerator within ±INT64_MAX over a positive denominator.
struct Ratio {
    std::int64_t numerator, denominator;
};

/// Greatest common divisor of two positive numbers: one division to bring them near, then by halving.
inline std::int64_t common_divisor(std::int64_t a, std::int64_t b) {
    if (a > b) std::swap(a, b);
    if (a == 1) return 1;
    b %= a;
    if (b == 0) return a;
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

inline std::int64_t divided(std::int64_t value, std::int64_t by) {
    return by == 1 ? value : value / by;
}

inline Ratio in_lowest_terms(std::int64_t numerator, std::int64_t denominator) {
    if (denominator == 1) return {numerator, 1};
    if (numerator == 0) return {0, 1};
    const std::int64_t shared = common_divisor(numerator < 0 ? -numerator : numerator, denominator);
    return {divided(numerator, shared), divided(denominator, shared)};
}

inline bool fits(__int128 value) {
    return value <= most && value >= -static_cast<__int128>(most);
}

}  // namespace fast

inline Exact::Exact(const fast::Ratio& lowest) : numerator_(lowest.numerator), denominator_(lowest.denominator) {}

inline Exact::Exact(std::int64_t whole) : numerator_(whole) {
    if (whole < -fast::most) [[unlikely]]
        *this = -Exact(fast::most) - Exact(1);
}

inline Exact::Exact(std::int64_t numerator, std::int64_t denominator) {
    if (numerator >= -fast::most && denominator > 0) [[likely]]
        *this = Exact(fast::in_lowest_terms(numerator, denominator));
    else
        *this = quotient_of_large(Exact(numerator), Exact(denominator));
}

// Small values are handed round more than they are reckoned with: two words, and no call.

[[gnu::always_inline]] inline Exact::Exact(const Exact& other) {
    *this = other;
}

[[gnu::always_inline]] inline Exact::Exact(Exact&& other) noexcept {
    *this = std::move(other);
}

[[gnu::always_inline]] inline Exact& Exact::operator=(const Exact& other) {
    if (!is_small() || !other.is_small()) [[unlikely]]
        return copy_large(other);
    numerator_ = other.numerator_;
    denominator_ = other.denominator_;
    return *this;
}

[[gnu::always_inline]] inline Exact& Exact::operator=(Exact&& other) noexcept {
    if (!is_small() || !other.is_small()) [[unlikely]]
        return move_large(other);
    numerator_ = other.numerator_;
    denominator_ = other.denominator_;
    return *this;
}

inline Exact::~Exact() {
    if (!is_small()) [[unlikely]]
        drop(large_);
}

/// Over the least common denominator; what then cancels divides the divisor that the denominators share
/// (Knuth, The Art of Computer Programming 2, 4.5.1).
inline Exact Exact::sum(const Exact& a, const Exact& b, bool subtract) {
    if (!a.is_small() || !b.is_small()) [[unlikely]]
        return sum_of_large(a, b, subtract);
    const std::int64_t shared =
        a.denominator_ == b.denominator_ ? a.denominator_ : fast::common_divisor(a.denominator_, b.denominator_);
    const std::int64_t a_rest = fast::divided(a.denominator_, shared);
    const std::int64_t b_rest = fast::divided(b.denominator_, shared);
    const Wide a_part = static_cast<Wide>(a.numerator_) * b_rest;
    const Wide b_part = static_cast<Wide>(b.numerator_) * a_rest;
    const Wide numerator = subtract ? a_part - b_part : a_part + b_part;
    if (!fast::fits(numerator)) [[unlikely]]
        return sum_of_large(a, b, subtract);
    const fast::Ratio top = fast::in_lowest_terms(static_cast<std::int64_t>(numerator), shared);
    const Wide denominator = static_cast<Wide>(a_rest) * b_rest * top.denominator;
    if (!fast::fits(denominator)) [[unlikely]]
        return sum_of_large(a, b, subtract);
    return Exact(fast::Ratio{top.numerator, static_cast<std::int64_t>(denominator)});
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
    const fast::Ratio left = fast::in_lowest_terms(a.numerator_, b.denominator_);
    const fast::Ratio right = fast::in_lowest_terms(b.numerator_, a.denominator_);
    const auto numerator = static_cast<Exact::Wide>(left.numerator) * right.numerator;
    const auto denominator = static_cast<Exact::Wide>(left.denominator) * right.denominator;
    if (!fast::fits(numerator) || !fast::fits(denominator)) [[unlikely]]
        return Exact::product_of_large(a, b);
    return Exact(fast::Ratio{static_cast<std::int64_t>(numerator), static_cast<std::int64_t>(denominator)});
}

inline Exact operator/(const Exact& a, const Exact& b) {
    if (!b.is_small() || b.numerator_ == 0) [[unlikely]]
        return Exact::quotient_of_large(a, b);
    const bool negative = b.numerator_ < 0;
    return a *
           Exact(negative ? fast::Ratio{-b.denominator_, -b.numerator_} : fast::Ratio{b.denominator_, b.numerator_});
}

inline Exact Exact::operator-() const {
    if (!is_small()) [[unlikely]]
        return sum_of_large(Exact(), *this, true);
    return Exact(fast::Ratio{-numerator_, denominator_});
}

inline double Exact::to_double() const {
    if (!is_small()) [[unlikely]]
        return double_of_large();
    return static_cast<double>(numerator_) / static_cast<double>(denominator_);
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
