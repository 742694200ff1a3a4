// SPDX-License-Identifier: MIT
#include "expected.hpp"

#include <algorithm>
#include <cmath>

namespace scruple::check {

using quantity::Unit;

std::optional<double> in_unit(const Content& content, Unit unit) {
    switch (unit) {
        case Unit::gram_per_litre:
            return content.g_per_l;
        case Unit::percent_w_v:
            return content.g_per_l / 10;
        case Unit::milligram_per_litre:
        case Unit::ppm:
            return content.g_per_l * 1000;
        case Unit::mole_per_litre:
            return content.mol_per_l;
        case Unit::millimole_per_litre:
            return content.mol_per_l * 1000;
        default:
            return std::nullopt;
    }
}

std::optional<Content> content_of(const Model& model, const std::vector<Content>& contents,
                                  const Expectation& expectation) {
    Content sum{expectation.chemical, expectation.form};
    bool any = false;
    const auto& chemical = model.chemicals[expectation.chemical];
    for (const auto& content : contents) {
        if (content.chemical != expectation.chemical) continue;
        any = true;
        sum.mol_per_l += content.mol_per_l;
        const bool same = content.form == expectation.form || content.form == none || expectation.form == none;
        sum.g_per_l +=
            same ? content.g_per_l : content.mol_per_l * chemical.forms[expectation.form].molar_mass.to_double();
    }
    return any ? std::optional(sum) : std::nullopt;
}

// A figure is printed with four digits, so an expectation met to within half of the last is met.
static constexpr double tolerance = 5e-5;

bool lies_within(double value, const Interval& range) {
    const double low = range.low.to_double();
    const double high = range.high.to_double();
    return value >= low - std::abs(low) * tolerance && value <= high + std::abs(high) * tolerance;
}

bool has_open_amount(const Section& section) {
    return std::ranges::any_of(section.lines, [](const Line& line) {
        const auto* addition = std::get_if<Addition>(&line);
        return addition != nullptr && addition->how == Addition::How::unknown;
    });
}

std::string range_text(const Interval& range, Unit unit) {
    auto text = quantity::exact_text(range.low);
    if (range.high != range.low) text += " to " + quantity::exact_text(range.high);
    return unit == Unit::none ? text : text + " " + std::string(quantity::info(unit).shown);
}

}  // namespace scruple::check
