// SPDX-License-Identifier: MIT
#include "judge.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

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

/// What most of the lines say, within `agree` of one another, as a logarithm: the middle of the fullest stretch, if it
/// has two lines and a third of all; 0 where they say nothing of the kind.
double said_by_most(std::vector<double> ratios) {
    std::ranges::sort(ratios);
    std::size_t most = 0;
    double middle = 0;
    for (std::size_t begin = 0, end = 0; begin < ratios.size(); ++begin) {
        while (end < ratios.size() && ratios[end] - ratios[begin] < agree) ++end;
        if (end - begin <= most) continue;
        most = end - begin;
        middle = ratios[begin + most / 2];
    }
    return most >= 2 && 3 * most >= ratios.size() && std::abs(middle) >= agree ? middle : 0;
}

}  // namespace

PerLitre Judge::per_litre(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const {
    const Known& known = layout_.lines[line];
    if (column >= layout_.columns.size() || !has_amount(*known.line, column)) return {};
    PerLitre it{amount_of(known.line->columns[column], known, shared, way, column, layout_.columns[column]), 0};
    const double volume = volume_of(layout_, known.line->solution, column, shared);
    const Measure& measure = known.line->columns[column];
    if (measure.per) {
        it.per_litre = it.amount.base / volume_of(*measure.per, shared, column) * 1000;
        it.amount.base = it.per_litre * volume / 1000;
    } else if (volume > 0) {
        it.per_litre = it.amount.base / volume * 1000;
    }
    return it;
}

PerLitre Judge::per_litre(std::size_t line, const Way& way, const Shared& shared) const {
    return per_litre(line, layout_.lines[line].line->stated, way, shared);
}

int Judge::direction(std::size_t column, std::size_t against) const {
    return (layout_.columns[column].metric ? 1 : 0) - (layout_.columns[against].metric ? 1 : 0);
}

std::vector<Compared> Judge::compared(std::size_t line, const Way& way, const Shared& shared) const {
    std::vector<Compared> all;
    const std::vector<Measure>& columns = layout_.lines[line].line->columns;
    const std::size_t against = layout_.lines[line].line->stated;
    const PerLitre first = per_litre(line, against, way, shared);
    if (first.per_litre <= 0) return all;
    for (std::size_t column = against + 1; column < std::min(columns.size(), layout_.columns.size()); ++column) {
        PerLitre other = per_litre(line, column, way, shared);
        if (other.per_litre <= 0) continue;
        if (other.amount.by_volume != first.amount.by_volume) {
            // A pure liquid is weighed in the one column and measured in the other.
            const double times = as_the_other_kind(line, way, other.amount.by_volume);
            other.amount.base *= times;
            other.per_litre *= times;
            other.amount.by_volume = other.amount.by_volume != (times != 1);
        }
        const double stronger = std::pow(shared.stronger, direction(column, against));
        const double exact = first.per_litre * stronger * other.amount.base / other.per_litre;
        all.push_back({column, against, other.amount.base, base_of_step(columns[column], other.amount), exact,
                       other.amount.by_volume == first.amount.by_volume});
    }
    return all;
}

/// What an alternative comes to in moles, against what it stands for: `1 oz dry, or 2¾ oz of crystals`.
double Judge::cost_of_alternatives(std::size_t line, const Way& way, const Shared& shared) const {
    const Known& known = layout_.lines[line];
    double cost = 0;
    for (const Line* other : known.alternatives) {
        const Named named = other->name.empty() ? known.what : chemical_named(model_, other->name);
        if (known.what.chemical == check::none || named.chemical != known.what.chemical) continue;
        const check::Chemical& chemical = model_.chemicals[named.chemical];
        const std::size_t column = known.line->stated;
        if (!has_amount(*other, column)) continue;
        const auto amount = [&](const Line& of) {
            return amount_of(of.columns[column], known, shared, way, column, layout_.columns[column]);
        };
        const Amount here = amount(*known.line);
        const Amount there = amount(*other);
        if (here.base <= 0 || there.base <= 0) continue;
        double least = std::numeric_limits<double>::infinity();
        for (const check::Form& form : chemical.forms) {
            if (!other->form.empty() && !is_called(form, other->form)) continue;
            const double meant = here.base * (form.molar_mass / chemical.forms[way.form].molar_mass).to_double();
            least = std::min(least, cost_of_printing(there.base, base_of_step(other->columns[column], there), meant));
        }
        if (std::isfinite(least)) cost += least;
    }
    return cost;
}

Weights Judge::weights(std::size_t line, const Way& way, const Shared& shared) const {
    Weights weights;
    for (const Compared& it : compared(line, way, shared))
        weights[Evidence::columns] +=
            it.same_kind ? cost_of_printing(it.printed, it.step, it.exact) : weight_for_volume;
    if (!layout_.lines[line].alternatives.empty())
        weights[Evidence::columns] += cost_of_alternatives(line, way, shared);
    const PerLitre first = per_litre(line, way, shared);
    const double most = dissolves(layout_.lines[line].what.chemical, way.form);
    if (most > 0 && !first.amount.by_volume && first.per_litre > most)
        weights[Evidence::dissolving] += will_not_dissolve;
    if (const auto range = usual(line, way.form)) {
        const double grams = substance(line, way, shared);
        if (grams > 0) weights[Evidence::usual] += cost_of_unusual(*range, grams);
    }
    return weights;
}

void add_stronger(const Judge& judge, const Layout& layout, std::vector<Shared>& shared) {
    const std::size_t before = shared.size();
    for (std::size_t s = 0; s < before; ++s) {
        std::vector<double> ratios;
        for (std::size_t line = 0; line < layout.lines.size(); ++line)
            for (const Compared& it : judge.compared(line, layout.lines[line].ways.front(), shared[s]))
                if (const int direction = judge.direction(it.column, it.against); it.same_kind && direction != 0)
                    ratios.push_back(direction * std::log(it.printed / it.exact));
        const double stronger = said_by_most(std::move(ratios));
        if (stronger == 0) continue;
        Shared more = shared[s];
        more.stronger = std::exp(stronger);
        more.weights[Evidence::habit] += stronger_throughout;
        shared.push_back(more);
    }
}

}  // namespace scruple::printed
