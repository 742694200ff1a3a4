// SPDX-License-Identifier: MIT
#include "judge.hpp"

#include <algorithm>
#include <cmath>

#include "weigh_columns.hpp"

namespace scruple::printed {
namespace {

constexpr double weight_for_volume = 4.0;  ///< g against ml
constexpr double will_not_dissolve = 3.0;
constexpr double stronger_throughout = 4.0;
constexpr double agree = 0.03;  ///< of two lines that say by how much one column is stronger

double base_of_step(const Measure& measure, const Amount& amount) {
    const double value = measure.pieces.back().value.to_double();
    const double whole = measure.pieces.size() == 1 ? amount.base : 0;
    return value > 0 && whole > 0 ? measure.step.to_double() * whole / value : 0;
}

}  // namespace

PerLitre Judge::per_litre(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const {
    const Known& known = layout_.lines[line];
    if (column >= known.line->columns.size() || column >= layout_.columns.size()) return {};
    PerLitre it{amount_of(known.line->columns[column], known, shared, way, column, layout_.columns[column].metric), 0};
    const double volume = volume_of(layout_, column, shared);
    if (volume > 0) it.per_litre = it.amount.base / volume * 1000;
    return it;
}

std::vector<Compared> Judge::compared(std::size_t line, const Way& way, const Shared& shared) const {
    std::vector<Compared> all;
    const std::vector<Measure>& columns = layout_.lines[line].line->columns;
    const PerLitre first = per_litre(line, 0, way, shared);
    if (first.per_litre <= 0) return all;
    for (std::size_t column = 1; column < std::min(columns.size(), layout_.columns.size()); ++column) {
        const PerLitre other = per_litre(line, column, way, shared);
        if (other.per_litre <= 0) continue;
        const double stronger = layout_.columns[column].metric ? shared.stronger : 1;
        const double exact = first.per_litre * stronger * other.amount.base / other.per_litre;
        all.push_back({column, 0, other.amount.base, base_of_step(columns[column], other.amount), exact,
                       other.amount.by_volume == first.amount.by_volume});
    }
    return all;
}

double Judge::dissolves(check::Id chemical, check::Id form) const {
    if (chemical == check::none) return 0;
    const check::Chemical& it = model_.chemicals[chemical];
    for (const check::Solubility& row : it.solubilities) {
        const bool near_20 = !row.at || (row.at->low <= 20 && row.at->high >= 20);
        if (!near_20 || row.solvent_chemical != model_.water || row.in_grams == 0) continue;
        double grams = (row.grams / row.in_grams).to_double() * 1000;
        if (row.form != check::none && form < it.forms.size())
            grams *= (it.forms[form].molar_mass / it.forms[row.form].molar_mass).to_double();
        return grams;
    }
    return 0;
}

double Judge::cost(std::size_t line, const Way& way, const Shared& shared) const {
    double cost = 0;
    for (const Compared& it : compared(line, way, shared))
        cost += it.same_kind ? cost_of_printing(it.printed, it.step, it.exact) : weight_for_volume;
    const PerLitre first = per_litre(line, 0, way, shared);
    const double most = dissolves(layout_.lines[line].what.chemical, way.form);
    if (most > 0 && !first.amount.by_volume && first.per_litre > most) cost += will_not_dissolve;
    return cost;
}

void add_stronger(const Judge& judge, const Layout& layout, std::vector<Shared>& shared) {
    const std::size_t before = shared.size();
    for (std::size_t s = 0; s < before; ++s) {
        std::vector<double> ratios;
        for (std::size_t line = 0; line < layout.lines.size(); ++line)
            for (const Compared& it : judge.compared(line, layout.lines[line].ways.front(), shared[s]))
                if (it.same_kind && layout.columns[it.column].metric) ratios.push_back(std::log(it.printed / it.exact));
        std::vector<double> tried;
        for (const double ratio : ratios) {
            const auto near = [&](double other) { return std::abs(other - ratio) < agree / 2; };
            if (std::ranges::any_of(tried, near)) continue;
            tried.push_back(ratio);
            const auto same =
                std::ranges::count_if(ratios, [&](double other) { return std::abs(other - ratio) < agree; });
            if (std::abs(ratio) < agree || same < 2) continue;
            Shared more = shared[s];
            more.stronger = std::exp(ratio);
            more.cost += stronger_throughout;
            shared.push_back(more);
        }
    }
}

}  // namespace scruple::printed
