// SPDX-License-Identifier: MIT
#include "scruple/plan/figure.hpp"

#include <utility>

namespace scruple::plan {

namespace {

using quantity::Exact;

/// How far the printed value is off, in percent of the exact one.
double error_of(const Exact& printed, const Exact& exact) {
    if (exact.is_zero()) return 0;
    return (quantity::magnitude(printed - exact) / quantity::magnitude(exact) * 100).to_double();
}

/// The step between numbers of so many significant figures near a value.
Exact step_of(const Exact& value, int digits) {
    Exact step = 1;
    for (int i = 1; i < digits; ++i) step /= 10;
    const Exact size = quantity::magnitude(value);
    for (Exact power = 10; power <= size; power *= 10) step *= 10;
    for (Exact power = 1; power > size; power /= 10) step /= 10;
    return step;
}

Figure figure(const Exact& printed, const Exact& exact, std::string unit) {
    return {printed, exact, quantity::exact_text(printed), std::move(unit), "", error_of(printed, exact)};
}

bool reads_better_in_thousands(const Exact& value) {
    return quantity::magnitude(value) >= 10000;
}

Figure in_readable_unit(const Exact& printed, const Exact& exact, const char* unit, const char* thousand) {
    if (!reads_better_in_thousands(exact)) return figure(printed, exact, unit);
    return figure(printed / 1000, exact / 1000, thousand);
}

Exact to_significant(const Exact& value, int digits) {
    return value.is_zero() ? value : value.rounded_to(step_of(value, digits));
}

}  // namespace

Figure plain(const Exact& value, std::string unit, int digits) {
    return figure(to_significant(value, digits), value, std::move(unit));
}

Figure plain_grams(const Exact& grams) {
    return grams_as_read(to_significant(grams, 4), grams);
}

Figure plain_ml(const Exact& ml) {
    return ml_as_read(to_significant(ml, 4), ml);
}

Figure grams_as_read(const Exact& printed, const Exact& exact) {
    return in_readable_unit(printed, exact, "g", "kg");
}

Figure ml_as_read(const Exact& printed, const Exact& exact) {
    return in_readable_unit(printed, exact, "ml", "l");
}

}  // namespace scruple::plan
