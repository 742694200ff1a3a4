// SPDX-License-Identifier: MIT
#include "elements.hpp"

#include <algorithm>

namespace scruple::chemistry {

namespace {

constexpr std::array<std::string_view, element_count> symbols = {
#define SCRUPLE_ELEMENT(symbol, weight, give_or_take) #symbol,
#include "scruple/chemistry/elements.inc"
#undef SCRUPLE_ELEMENT
};

/// `22.990` as 22990 / 1000, so that the weight is the printed decimal and not the double next to it.
quantity::Exact exact_decimal(std::string_view text) {
    std::int64_t digits = 0, scale = 1;
    bool after_point = false;
    for (const char c : text) {
        if (c == '.') {
            after_point = true;
            continue;
        }
        digits = digits * 10 + (c - '0');
        if (after_point) scale *= 10;
    }
    return {digits, scale};
}

}  // namespace

std::string_view symbol(Element element) {
    return symbols[element];
}

std::optional<Element> find_element(std::string_view symbol) {
    const auto found = std::find(symbols.begin(), symbols.end(), symbol);
    if (found == symbols.end()) return std::nullopt;
    return static_cast<Element>(found - symbols.begin());
}

const quantity::Exact& atomic_weight(Element element) {
    static const Tally weights = {
#define SCRUPLE_ELEMENT(symbol, weight, give_or_take) exact_decimal(#weight),
#include "scruple/chemistry/elements.inc"
#undef SCRUPLE_ELEMENT
    };
    return weights[element];
}

double atomic_weight_off(Element element) {
    static constexpr std::array<double, element_count> off = {
#define SCRUPLE_ELEMENT(symbol, weight, give_or_take) give_or_take,
#include "scruple/chemistry/elements.inc"
#undef SCRUPLE_ELEMENT
    };
    return off[element];
}

}  // namespace scruple::chemistry
