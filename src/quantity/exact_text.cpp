// SPDX-License-Identifier: MIT
#include <array>
#include <charconv>
#include <cmath>

#include "scruple/quantity/exact.hpp"

namespace scruple::quantity {

namespace {

constexpr int most_places = 12;  // longer decimals are read more surely as fractions

Exact power_of_ten(int exponent) {
    Exact power = 1;
    for (int i = 0; i < exponent; ++i) power *= 10;
    return power;
}

/// `digits` with a point before the last `places` of them: leading zero, no trailing ones.
std::string with_point(std::string digits, int places) {
    const auto after = static_cast<std::size_t>(places);
    if (digits.size() <= after) digits.insert(0, after + 1 - digits.size(), '0');
    digits.insert(digits.size() - after, 1, '.');
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') digits.pop_back();
    return digits;
}

std::string signed_text(bool negative, const std::string& text) {
    return negative && text != "0" ? '-' + text : text;
}

std::string mixed_fraction(const Exact& value) {
    const Exact whole = value.floor();
    const std::string fraction = (value - whole).ratio_text();
    return whole.is_zero() ? fraction : whole.ratio_text() + ' ' + fraction;
}

int digit_count(const Exact& whole) {
    return static_cast<int>(whole.ratio_text().size());
}

/// e where 10^e <= value < 10^(e + 1); value > 0. For 0.1, 0.01 and so on it is one less, which asks for one
/// place more than is due: a zero, and so dropped.
int decimal_exponent(const Exact& value) {
    return value >= 1 ? digit_count(value.floor()) - 1 : -digit_count((1 / value).floor());
}

/// The text of `mantissa` (`d.ddd`, its point taken out) times 10^exponent.
std::string scaled_text(std::string mantissa, int exponent) {
    if (mantissa.size() > 1) mantissa.erase(1, 1);
    const int places = static_cast<int>(mantissa.size()) - 1 - exponent;
    if (places >= 0) return with_point(std::move(mantissa), places);
    return mantissa + std::string(static_cast<std::size_t>(-places), '0');
}

}  // namespace

std::string exact_text(const Exact& value) {
    const Exact size = magnitude(value);
    Exact scaled = size;
    for (int places = 0; places <= most_places; ++places, scaled *= 10)
        if (scaled.is_whole()) return signed_text(value < 0, with_point(scaled.ratio_text(), places));
    return signed_text(value < 0, mixed_fraction(size));
}

std::string decimal_text(const Exact& value, int places) {
    const Exact scaled = (magnitude(value) * power_of_ten(places)).rounded_to(1);
    return signed_text(value < 0, with_point(scaled.ratio_text(), places));
}

std::string significant_text(const Exact& value, int digits) {
    if (value.is_zero()) return "0";
    const int places = digits - 1 - decimal_exponent(magnitude(value));
    if (places >= 0) return decimal_text(value, places);
    return value.rounded_to(power_of_ten(-places)).ratio_text();
}

std::string significant_text(double value, int digits) {
    std::array<char, 64> buffer;
    const auto end =
        std::to_chars(buffer.begin(), buffer.end(), std::fabs(value), std::chars_format::scientific, digits - 1).ptr;
    std::string text(buffer.begin(), end);
    const std::size_t e = text.find('e');
    if (e == std::string::npos) return text;  // infinity and not-a-number have no digits
    return signed_text(value < 0, scaled_text(text.substr(0, e), std::stoi(text.substr(e + 1))));
}

std::string division_text(const Exact& value, const Exact& division) {
    return exact_text(value.rounded_to(division));
}

}  // namespace scruple::quantity
