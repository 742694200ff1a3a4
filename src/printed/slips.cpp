// SPDX-License-Identifier: MIT
#include "slips.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "scruple/quantity/exact.hpp"

namespace scruple::printed {
namespace {

constexpr double too_far = 0.15;  ///< three deviations of a rounder figure
constexpr double near = 0.06;
constexpr double grains_in_gram = 15.4324;

bool is_near(double ratio, double of) {
    return std::abs(std::log(ratio / of)) < near;
}

std::string in_three_figures(double value) {
    return quantity::significant_text(value, 3);
}

/// What is printed is what ought to be with two neighbouring figures exchanged, or with one left out.
std::string misprint(double printed, double exact) {
    const std::string there = in_three_figures(printed);
    for (int digits = 1; digits <= 3; ++digits) {
        const std::string meant = quantity::significant_text(exact, digits);
        for (std::size_t i = 0; i < meant.size(); ++i) {
            std::string swapped = meant;
            if (i + 1 < swapped.size()) std::swap(swapped[i], swapped[i + 1]);
            if (swapped == there && swapped != meant)
                return fmt::format("two figures have changed places: {} for {}", there, meant);
            std::string dropped = meant;
            dropped.erase(i, 1);
            if (dropped == there && meant[i] != '0' && meant[i] != '.')
                return fmt::format("a figure has dropped out: {} for {}", there, meant);
        }
    }
    return {};
}

std::string of_forms(const check::Model& model, const Known& known, double ratio, const Way& way) {
    if (known.what.chemical == check::none || way.form == check::none) return {};
    const check::Chemical& chemical = model.chemicals[known.what.chemical];
    const check::Form& here = chemical.forms[way.form];
    for (const check::Form& other : chemical.forms) {
        const double factor = (other.molar_mass / here.molar_mass).to_double();
        if (std::abs(std::log(factor)) < near) continue;
        if (is_near(ratio, factor))
            return fmt::format("the columns mean different forms: {} in the one, {} in the other", here.name,
                               other.name);
        if (is_near(ratio, 1 / factor))
            return fmt::format("the factor between {} and {} was applied the wrong way round", here.name, other.name);
    }
    return {};
}

}  // namespace

bool disagree(const Compared& compared) {
    if (!compared.same_kind) return true;
    const double off = std::abs(std::log(compared.printed / compared.exact));
    return off > std::max(too_far, 1.1 * compared.step / 2 / compared.printed);
}

std::string likely_slip(const check::Model& model, const Layout& layout, std::size_t line, const Compared& compared,
                        const Shared& shared, const Way& way) {
    if (!compared.same_kind)
        return "one column is a weight and the other a volume: g printed for ml, or the other way round";
    const double ratio = compared.printed / compared.exact;
    for (const double power : {0.01, 0.1, 10.0, 100.0})
        if (is_near(ratio, power))
            return fmt::format("the point has slipped: {} for {}", in_three_figures(compared.printed),
                               in_three_figures(compared.exact));
    const std::size_t solution = layout.lines[line].line->solution;
    const double here = volume_of(layout, solution, compared.column, shared);
    const double there = volume_of(layout, solution, compared.against, shared);
    if (here > 0 && there > 0 && !is_near(here / there, 1) && is_near(ratio, there / here))
        return "the amount was converted and not scaled to the volume of its column";
    if (is_near(ratio, grains_in_gram)) return "grains are printed where grams belong";
    if (is_near(ratio, 1 / grains_in_gram)) return "grams are printed where grains belong";
    if (std::string forms = of_forms(model, layout.lines[line], ratio, way); !forms.empty()) return forms;
    if (std::string print = misprint(compared.printed, compared.exact); !print.empty()) return print;
    for (const double times : {2.0, 0.5})
        if (is_near(ratio, times)) return times > 1 ? "the amount is doubled" : "the amount is halved";
    return {};
}

}  // namespace scruple::printed
