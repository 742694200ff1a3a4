// SPDX-License-Identifier: MIT
#include "acidity.hpp"

#include <algorithm>
#include <cmath>

#include "directions.hpp"
#include "scruple/check/ph.hpp"

namespace scruple::printed {
namespace {

constexpr double cost_a_unit = 1.2, most_ph_cost = 3.0;
/// What another form, another ounce or another percent can move a pH by, and some more; ours.
constexpr double may_move = 0.7;

double cost_of_ph(const Range& usual, double ph) {
    const double off = std::max({usual.least - ph, ph - usual.most, 0.0});
    return std::min(off * cost_a_unit, most_ph_cost);
}

/// The share of the whole that is one of the solutions.
double share_of(const Mixture& mixture, std::size_t solution) {
    quantity::Exact all = mixture.water;
    quantity::Exact mine = 0;
    for (const Mixture::Share& share : mixture.shares) {
        all += share.parts;
        if (share.solution == solution) mine += share.parts;
    }
    return all > 0 ? (mine / all).to_double() : 0;
}

}  // namespace

Held held_by(const check::Model& model, const Layout& layout, const Judge& judge, const Found& found,
             const Mixture& mixture) {
    const Mixture mixed = in_one_unit(mixture, found.shared.fluid[0]);
    Held held;
    for (std::size_t line = 0; line < layout.lines.size(); ++line) {
        const Known& known = layout.lines[line];
        const double share = share_of(mixed, known.line->solution);
        if (share == 0) continue;
        const Way& way = known.ways[found.ways[line]];
        const double grams = judge.substance(line, way, found.shared) * share;
        if (grams <= 0) {
            held.all_known = false;
            continue;
        }
        const double molar_mass = model.chemicals[known.what.chemical].forms[way.form].molar_mass.to_double();
        held.contents.push_back(
            {.chemical = known.what.chemical, .form = way.form, .g_per_l = grams, .mol_per_l = grams / molar_mass});
    }
    return held;
}

std::optional<double> ph_of(const check::Model& model, const Held& held) {
    if (!held.all_known || held.contents.empty()) return std::nullopt;
    return check::ph_value_of(model, held.contents, check::usual_celsius);
}

Acidity::Acidity(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge)
    : model_(model), layout_(layout), judge_(judge), usual_(usual_ph(judge.role())) {
    for (const Line& line : page.lines)
        if (line.mixture && !in_use_) in_use_ = line.mixture;
    if (!in_use_ && page.solutions.size() == 1) in_use_ = Mixture{{{0, 1}}, 0};
}

std::optional<double> Acidity::ph(const Found& found) const {
    if (!in_use_) return std::nullopt;
    return ph_of(model_, held_by(model_, layout_, judge_, found, *in_use_));
}

double Acidity::cost(const Found& found) const {
    if (!usual_) return 0;
    const auto value = ph(found);
    return value ? cost_of_ph(*usual_, *value) : 0;
}

double Acidity::cost_beside(const Found& found, const Found& best) const {
    if (!usual_) return 0;
    const auto value = ph(best);
    if (!value) return 0;
    const bool near_an_end = *value < usual_->least + may_move || *value > usual_->most - may_move;
    return near_an_end || found.shared.gr_is_gram != best.shared.gr_is_gram ? cost(found) : 0;
}

Found Acidity::best(const Search& search) const {
    Found best = search.best();
    double least = cost(best);
    if (least == 0) return best;
    least += best.cost;
    const auto weigh = [&](std::optional<Found> other) {
        // What costs more without its pH cannot cost less with it.
        if (!other || other->cost >= least) return;
        const double total = other->cost + cost(*other);
        if (total >= least) return;
        least = total;
        best = std::move(*other);
    };
    for (std::size_t line = 0; line < layout_.lines.size(); ++line)
        for (const Way& way : layout_.lines[line].ways)
            weigh(search.best_with(line, [&](const Way& other) { return other.form == way.form; }));
    for (const bool gram : {false, true})
        weigh(search.best_of([&](const Shared& one) { return one.gr_is_gram == gram; }));
    return best;
}

}  // namespace scruple::printed
