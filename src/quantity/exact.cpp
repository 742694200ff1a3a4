// SPDX-License-Identifier: MIT
#include "scruple/quantity/exact.hpp"

#include <boost/multiprecision/cpp_int.hpp>
#include <stdexcept>

namespace scruple::quantity {

using Rational = boost::multiprecision::cpp_rational;
using Integer = boost::multiprecision::cpp_int;

/// The two directions between Exact and Boost: `of` promotes, `kept` demotes where the value fits again.
struct Exact::Large {
    Rational value;

    static Rational of(const Exact& exact) {
        return exact.is_small() ? Rational(exact.numerator_, exact.denominator_) : exact.large_->value;
    }

    static Exact kept(const Rational& value) {
        const Integer top = numerator(value);
        const Integer bottom = denominator(value);
        Exact result;
        if (abs(top) <= fast::most && bottom <= fast::most) {
            result.numerator_ = top.convert_to<std::int64_t>();
            result.denominator_ = bottom.convert_to<std::int64_t>();
        } else {
            result.large_ = new Large{value};
            result.denominator_ = 0;
        }
        return result;
    }

    static Integer floor_of(const Rational& value) {
        const Integer top = numerator(value);
        const Integer bottom = denominator(value);
        const Integer cut = top / bottom;
        return top < 0 && cut * bottom != top ? Integer(cut - 1) : cut;
    }
};

Exact& Exact::copy_large(const Exact& from) {
    Exact copy;
    if (from.is_small())
        copy.numerator_ = from.numerator_;
    else
        copy.large_ = new Large(*from.large_);
    copy.denominator_ = from.denominator_;
    return move_large(copy);
}

/// What it is moved from is 0 then, where it was large.
Exact& Exact::move_large(Exact& from) noexcept {
    if (this == &from) return *this;
    if (!is_small()) drop(large_);
    denominator_ = from.denominator_;
    if (from.is_small()) {
        numerator_ = from.numerator_;
        return *this;
    }
    large_ = from.large_;
    from.numerator_ = 0;
    from.denominator_ = 1;
    return *this;
}

void Exact::drop(Large* large) {
    delete large;
}

Exact Exact::sum_of_large(const Exact& a, const Exact& b, bool subtract) {
    if (subtract) return Large::kept(Large::of(a) - Large::of(b));
    return Large::kept(Large::of(a) + Large::of(b));
}

Exact Exact::product_of_large(const Exact& a, const Exact& b) {
    return Large::kept(Large::of(a) * Large::of(b));
}

Exact Exact::quotient_of_large(const Exact& a, const Exact& b) {
    if (b.is_zero()) throw std::domain_error("division by zero");
    return Large::kept(Large::of(a) / Large::of(b));
}

std::strong_ordering Exact::compare_large(const Exact& a, const Exact& b) {
    return Large::of(a).compare(Large::of(b)) <=> 0;
}

bool Exact::is_whole() const {
    return is_small() ? denominator_ == 1 : denominator(large_->value) == 1;
}

double Exact::double_of_large() const {
    return large_->value.convert_to<double>();
}

Exact Exact::floor() const {
    if (!is_small()) return Large::kept(Rational(Large::floor_of(large_->value)));
    const std::int64_t cut = numerator_ / denominator_;
    return numerator_ < 0 && denominator_ != 1 ? cut - 1 : cut;
}

Exact Exact::ceil() const {
    return -(-*this).floor();
}

Exact Exact::rounded_to(const Exact& step) const {
    const Exact steps = (magnitude(*this) / step + Exact(1, 2)).floor() * step;
    return *this < 0 ? -steps : steps;
}

std::string Exact::ratio_text() const {
    if (!is_small()) return large_->value.str();
    const std::string top = std::to_string(numerator_);
    return denominator_ == 1 ? top : top + '/' + std::to_string(denominator_);
}

}  // namespace scruple::quantity
