// SPDX-License-Identifier: MIT
// What a line holds of the chemical itself, against what solutions usually hold.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "directions.hpp"
#include "judge.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/check/solubility.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

/// Of a salt's solution whose density nobody told: 0.7 % a percent, the middle of common salts; ours.
constexpr double heavier_by = 0.007;

double pure_density(const check::Chemical& chemical) {
    for (const check::Density& row : chemical.densities)
        if (!row.strength) return row.g_per_ml.to_double();
    return 0;
}

/// Of a solution by weight: the library's, else between water and the pure liquid.
double density_of_solution(const check::Chemical& chemical, check::Id form, const quantity::Exact& percent) {
    const check::Strength strength{percent, quantity::Unit::percent_w_w};
    if (const auto known = check::density_of(chemical, form, strength)) return known->to_double();
    const double pure = pure_density(chemical);
    const double share = percent.to_double() / 100;
    return pure > 0 ? 1 + (pure - 1) * share : 1 + heavier_by * share * 100;
}

struct Strength {
    double times, cost;
};
// That a formula is a stock solution, to be diluted by its reader; ours.
constexpr std::array strengths{Strength{1, 0},   Strength{2, 2.2}, Strength{3, 2.4}, Strength{4, 2.4},
                               Strength{5, 2.6}, Strength{8, 2.8}, Strength{10, 2.8}};
constexpr double called_stock = 1.7;  ///< less, where the page speaks of a stock or a concentrate

bool speaks_of_stock(const Page& page) {
    return std::ranges::any_of(page.lines, [](const Line& line) {
        const std::string said = lower(line.text);
        return has_word(said, "stock") || has_word(said, "concentrated") || has_word(said, "dilute");
    });
}

}  // namespace

double Judge::dissolves(check::Id chemical, check::Id form) const {
    if (chemical == check::none) return 0;
    const check::Chemical& it = model_.chemicals[chemical];
    // Developing agents are weak acids and bases: what dissolves in water says little of a developer.
    if (std::ranges::find(it.acts_as, "developing agent") != it.acts_as.end()) return 0;
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

double Judge::grams_in_ml(const Known& known, const Way& way) const {
    const check::Chemical& chemical = model_.chemicals[known.what.chemical];
    if (known.line->saturated) {
        check::Addition addition;
        addition.chemical = known.what.chemical;
        addition.form = way.form;
        const auto grams = check::saturated_grams_per_ml(model_, addition, {20, 20});
        return grams ? grams->to_double() : 0;
    }
    if (!known.line->percent) return pure_density(chemical) * check::purity(chemical.forms[way.form]).to_double();
    const double share = known.line->percent->to_double() / 100;
    switch (way.percent) {
        case Percent::by_volume:
            return share * pure_density(chemical);
        case Percent::by_weight:
            return share * density_of_solution(chemical, way.form, *known.line->percent);
        case Percent::weight_in_volume:
            return share;
    }
    return 0;
}

double Judge::as_the_other_kind(std::size_t line, const Way& way, bool by_volume) const {
    const Known& known = layout_.lines[line];
    const bool pure = known.pure_liquid && !known.line->percent && !known.line->saturated;
    const double density = pure && way.form != check::none ? pure_density(model_.chemicals[known.what.chemical]) : 0;
    if (density <= 0) return 1;
    return by_volume ? density : 1 / density;
}

double Judge::substance(std::size_t line, std::size_t column, const Way& way, const Shared& shared) const {
    const Known& known = layout_.lines[line];
    const PerLitre it = per_litre(line, column, way, shared);
    if (known.what.chemical == check::none || it.per_litre <= 0) return 0;
    if (it.amount.by_volume) return it.per_litre * grams_in_ml(known, way);
    return it.per_litre * check::purity(model_.chemicals[known.what.chemical].forms[way.form]).to_double();
}

double Judge::substance(std::size_t line, const Way& way, const Shared& shared) const {
    return substance(line, layout_.lines[line].line->stated, way, shared);
}

std::optional<Range> Judge::usual(std::size_t line, check::Id form) const {
    const Known& known = layout_.lines[line];
    auto range = usual_range(model_, role_, known.what.chemical, form);
    if (!range) return range;
    const double times = strength(known.line->solution).times;
    return Range{range->least * times, range->most * times};
}

namespace {

std::optional<double> strength_by_directions(const Page& page, std::size_t solution, Fluid fluid) {
    for (const Line& line : page.lines) {
        if (line.what == Line::What::dilution && line.ratio && page.solutions.size() == 1)
            return (line.ratio->one + line.ratio->other).to_double() / line.ratio->one.to_double();
        if (!line.mixture) continue;
        const Mixture mixture = in_one_unit(*line.mixture, fluid);
        quantity::Exact all = mixture.water;
        quantity::Exact mine = 0;
        for (const Mixture::Share& share : mixture.shares) {
            all += share.parts;
            if (share.solution == solution) mine += share.parts;
        }
        if (mine > 0) return (all / mine).to_double();
    }
    return std::nullopt;
}

/// What a line costs at best if its solution is so many times stronger than in use; nothing where the table is silent.
std::optional<double> cost_at(const Judge& judge, const Layout& layout, std::size_t line, const Shared& shared,
                              double times) {
    std::optional<double> least;
    for (const Way& way : layout.lines[line].ways) {
        const auto range = judge.usual(line, way.form);
        const double grams = range ? judge.substance(line, way, shared) : 0;
        if (grams <= 0) continue;
        const double cost = way.weights.sum() + cost_of_unusual(*range, grams / times);
        least = std::min(least.value_or(cost), cost);
    }
    return least;
}

/// Whether most of what the table knows is outside of what is usual for the solution in use: a slip is in one line.
bool is_mostly_unusual(const Judge& judge, const Layout& layout, std::size_t solution, const Shared& shared) {
    constexpr double worth_counting = 0.1;
    std::size_t known = 0;
    std::size_t unusual = 0;
    for (std::size_t line = 0; line < layout.lines.size(); ++line) {
        if (layout.lines[line].line->solution != solution) continue;
        std::optional<double> least;
        for (const Way& way : layout.lines[line].ways) {
            const auto range = judge.usual(line, way.form);
            const double grams = range ? judge.substance(line, way, shared) : 0;
            if (grams > 0) least = std::min(least.value_or(1), cost_of_unusual(*range, grams));
        }
        if (!least) continue;
        ++known;
        unusual += *least > worth_counting ? 1 : 0;
    }
    return unusual >= 2 && 2 * unusual >= known;
}

/// `A` of `A` and `B`, and not `Fixing bath`.
bool is_one_of_several(const Page& page, std::size_t solution) {
    constexpr std::size_t longest = 3;  // of a letter or a number
    return page.solutions.size() > 1 && page.solutions[solution].label.size() <= longest;
}

double strength_by_lines(const Judge& judge, const Layout& layout, std::size_t solution, const Shared& shared,
                         double less, double& cost) {
    double best = 1;
    cost = std::numeric_limits<double>::infinity();
    const bool mostly = is_mostly_unusual(judge, layout, solution, shared);
    for (const Strength& tried : strengths) {
        double sum = tried.times > 1 ? tried.cost - less : 0;
        for (std::size_t line = 0; line < layout.lines.size(); ++line)
            if (layout.lines[line].line->solution == solution)
                sum += cost_at(judge, layout, line, shared, tried.times).value_or(0);
        if (tried.times > 1 && !mostly) break;
        if (sum >= cost) continue;
        cost = sum;
        best = tried.times;
    }
    return best;
}

}  // namespace

std::vector<SolutionStrength> strengths_of(const Judge& judge, const Page& page, const Layout& layout,
                                           const std::vector<Shared>& shared) {
    std::vector<SolutionStrength> all;
    const double less = speaks_of_stock(page) || page.solutions.size() > 1 ? called_stock : 0;
    for (std::size_t solution = 0; solution < page.solutions.size(); ++solution) {
        double best = strength_by_directions(page, solution, shared.front().fluid[0]).value_or(0);
        double least = std::numeric_limits<double>::infinity();
        // What `gr` is changes figures fifteenfold; no other shared reading by more than a fifth.
        for (const bool gram : {false, true}) {
            const auto one = std::ranges::find(shared, gram, &Shared::gr_is_gram);
            if (best > 0 || one == shared.end()) continue;
            double cost = 0;
            const double times = strength_by_lines(judge, layout, solution, *one, less, cost);
            cost += one->weights.sum();
            if (cost < least) {
                least = cost;
                all.resize(solution + 1);
                all[solution].times = times;
            }
        }
        all.resize(solution + 1);
        if (best > 0)
            all[solution].times = best;
        else
            all[solution].may_be_stronger = is_one_of_several(page, solution);
    }
    return all;
}

}  // namespace scruple::printed
