// SPDX-License-Identifier: MIT
#include "expected.hpp"

#include <algorithm>
#include <cmath>

#include "give_or_take.hpp"

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

std::string expected_name(const Model& model, const Expectation& expectation) {
    if (expectation.ion) return std::string(expectation.ion->text);
    return shown_name(model.chemicals[expectation.chemical], expectation.form);
}

namespace {

void add(Content& sum, double g_per_l, double mol_per_l, double off) {
    sum.give_or_take = give_or_take_of_sum(sum.mol_per_l, sum.give_or_take, mol_per_l, off);
    sum.g_per_l += g_per_l;
    sum.mol_per_l += mol_per_l;
}

double grams_as(const Chemical& chemical, const Content& content, Id form) {
    const bool same = content.form == form || content.form == none || form == none;
    return same ? content.g_per_l : content.mol_per_l * chemical.forms[form].molar_mass.to_double();
}

std::optional<Content> of_one_chemical(const Model& model, const std::vector<Content>& contents,
                                       const Expectation& expectation) {
    std::optional<Content> sum;
    for (const auto& content : contents) {
        if (content.chemical != expectation.chemical) continue;
        if (!sum) sum = {expectation.chemical, expectation.form};
        const double grams = grams_as(model.chemicals[content.chemical], content, expectation.form);
        add(*sum, grams, content.mol_per_l, content.give_or_take);
    }
    return sum;
}

std::optional<Content> of_ion(const Model& model, const std::vector<Content>& contents, const Ion& wanted) {
    std::optional<Content> sum;
    const double g_per_mol = chemistry::molar_mass(wanted.formula).to_double();
    for (const auto& content : contents)
        for (const auto& ion : model.chemicals[content.chemical].ions)
            if (ion.formula == wanted.formula) {
                if (!sum) sum.emplace();
                const double mol = content.mol_per_l * ion.coefficient;
                add(*sum, mol * g_per_mol, mol, content.give_or_take);
            }
    return sum;
}

}  // namespace

std::optional<Content> content_of(const Model& model, const std::vector<Content>& contents,
                                  const Expectation& expectation) {
    return expectation.ion ? of_ion(model, contents, *expectation.ion) : of_one_chemical(model, contents, expectation);
}

// A figure is printed with four digits, so an expectation met to within half of the last is met.
static constexpr double tolerance = 5e-5;

bool lies_within(double value, const Interval& range) {
    const double low = range.low.to_double();
    const double high = range.high.to_double();
    return value >= low - std::abs(low) * tolerance && value <= high + std::abs(high) * tolerance;
}

bool has_open_amount(const Section& section) {
    return section.had_open_amount && any_amount_is_open(section);
}

bool any_amount_is_open(const Section& section) {
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
