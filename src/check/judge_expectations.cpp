// SPDX-License-Identifier: MIT
// Whether the contents are what the author expects.
#include <algorithm>
#include <cmath>

#include "passes.hpp"
#include "scruple/check/contents.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Unit;

/// The content in the expectation's own unit.
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

/// All forms of the chemical together, by mole, in grams of the form that is expected.
std::optional<Content> found(const Model& model, const std::vector<Content>& contents, const Expectation& expectation) {
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
constexpr double tolerance = 5e-5;

bool lies_within(double value, const Interval& range) {
    const double low = range.low.to_double();
    const double high = range.high.to_double();
    return value >= low - std::abs(low) * tolerance && value <= high + std::abs(high) * tolerance;
}

std::string range_text(const Interval& range, Unit unit) {
    auto text = quantity::exact_text(range.low);
    if (range.high != range.low) text += " to " + quantity::exact_text(range.high);
    return text + " " + std::string(quantity::info(unit).shown);
}

void judge_one(Reader& reader, const Expectation& expectation, const std::vector<Content>& contents) {
    const auto& chemical = reader.model.chemicals[expectation.chemical];
    const auto name = shown_name(chemical, expectation.form);
    const auto content = found(reader.model, contents, expectation);
    if (!content) {
        reader.report(Kind::expectation_of_nothing, expectation.place.span, {name});
        return;
    }
    const auto value = in_unit(*content, expectation.unit);
    if (!value) {
        reader.report(
            Kind::wrong_kind_of_unit, expectation.place.span,
            {quantity::info(expectation.unit).shown, "a strength by weight or volume", "g/l, % w/v, mol/l or ppm"});
        return;
    }
    if (lies_within(*value, expectation.range)) return;
    const auto is = quantity::significant_text(*value, 4) + " " + std::string(quantity::info(expectation.unit).shown);
    reader.report(Kind::expectation_missed, expectation.place.span,
                  {name, is, range_text(expectation.range, expectation.unit)});
}

}  // namespace

void judge_expectations(Reader& reader, Id section, std::vector<ContentsTable>& tables) {
    const auto& solution = reader.model.sections[section];
    if (std::ranges::all_of(solution.expects, &Expectation::ph)) return;
    const auto variants = solution.recipe == none ? 0 : reader.model.recipes[solution.recipe].variants.size();
    for (std::size_t variant = 0; variant < std::max<std::size_t>(variants, 1); ++variant) {
        if (variant == tables.size()) tables.emplace_back(reader.model, variant);
        const auto& known = tables[variant].of(section);
        if (!known.whole) return;
        for (const auto& expectation : solution.expects) {
            if (!expectation.ph) judge_one(reader, expectation, known.contents);
        }
    }
}

}  // namespace scruple::check
