// SPDX-License-Identifier: MIT
// What all lines of a page share, in every combination.
#include <algorithm>
#include <array>
#include <cmath>

#include "by_hand.hpp"
#include "directions.hpp"

namespace scruple::printed {
namespace {

// As costs; ours, from what formularies usually mean.
constexpr double abroad = 3.0;            ///< another country's measures
constexpr double other_spelling = 1.0;    ///< the other country's than that whose spelling the page has
constexpr double no_round_measure = 0.6;  ///< 20 ounces are an imperial pint, and 16 or 32 are US measures
constexpr double druggists_weight = 1.0;  ///< chemicals were sold by avoirdupois
constexpr double headed_otherwise = 6.0;  ///< than what stands over the column
constexpr double both_alike = 2.0;        ///< two old columns in the same measures
constexpr double gram_beside_ounces = 6.0, grain_beside_grams = 3.0;

using Words = std::initializer_list<UnitWord>;

bool has_unit(const Page& page, std::size_t column, Words units) {
    return std::ranges::any_of(page.lines, [&](const Line& line) {
        return line.what != Line::What::words && column < line.columns.size() &&
               std::ranges::any_of(line.columns[column].pieces, [&](const Piece& piece) {
                   return !piece.whose.fluid && std::ranges::find(units, piece.unit) != units.end();
               });
    });
}

/// Whether its readings differ by whose fluid measures they are.
bool has_fluids(const Page& page, const Layout& layout, std::size_t column) {
    if (has_unit(page, column,
                 {UnitWord::fluid_ounce, UnitWord::fluid_drachm, UnitWord::pint, UnitWord::quart, UnitWord::gallon,
                  UnitWord::minim}))
        return true;
    if (column == 0 &&
        std::ranges::any_of(page.lines, [](const Line& line) { return line.mixture && mixes_measures(*line.mixture); }))
        return true;
    const auto ounces = [column](const Line* line) {
        const Piece& piece = line->columns[column].pieces.front();
        return piece.unit == UnitWord::ounce && !piece.whose.fluid;
    };
    return std::ranges::any_of(
        layout.volumes, [&](const auto& of_columns) { return std::ranges::any_of(of_columns[column].lines, ounces); });
}

/// What is varied of one thing: both values, or the one that a `reading` line says.
std::vector<bool> values(bool open, bool hand_false, bool hand_true) {
    if (!open || hand_false) return {false};
    if (hand_true) return {true};
    return {false, true};
}

/// Whose measures the volumes of a column are round numbers of: 10, 20, 40 and 80 ounces are an imperial half pint and
/// what is made of it, 8, 16, 32 and 64 a US one.
std::optional<Fluid> round_measures(const Layout& layout, std::size_t column) {
    const auto is_one_of = [](double value, const std::array<double, 6>& all) {
        return std::ranges::find(all, value) != all.end();
    };
    int imperial = 0;
    int us = 0;
    for (const auto& of_columns : layout.volumes)
        for (const Line* line : of_columns[column].lines) {
            const Piece& piece = line->columns[column].pieces.front();
            if (piece.unit != UnitWord::ounce && piece.unit != UnitWord::fluid_ounce) continue;
            imperial += is_one_of(piece.value.to_double(), {5, 10, 20, 40, 80, 160}) ? 1 : 0;
            us += is_one_of(piece.value.to_double(), {8, 16, 32, 64, 96, 128}) ? 1 : 0;
        }
    if (imperial == us) return std::nullopt;
    return imperial > us ? Fluid::imperial : Fluid::us;
}

Weights weights_of_fluid(const Page& page, const Layout& layout, std::size_t column, Fluid fluid) {
    Weights weights;
    const auto against = [fluid](Page::Country country) {
        return (country == Page::Country::britain && fluid == Fluid::us) ||
               (country == Page::Country::america && fluid == Fluid::imperial);
    };
    const auto& headed = layout.columns[column].whose.fluid;
    if (headed && *headed != fluid) weights[Evidence::name] += headed_otherwise;
    const auto round = round_measures(layout, column);
    if (round && *round != fluid) weights[Evidence::habit] += no_round_measure;
    if (column > 0) return weights;
    if (against(page.country)) weights[Evidence::book] += abroad;
    if (against(page.spelling)) weights[Evidence::book] += other_spelling;
    return weights;
}

class Combinations {
  public:
    template <class Set>
    void vary(const std::vector<bool>& both, Set set) {
        std::vector<Shared> more;
        for (const Shared& one : all)
            for (const bool value : both) set(more.emplace_back(one), value);
        all = std::move(more);
    }
    std::vector<Shared> all{Shared{}};
};

void vary_fluids(const Page& page, const Layout& layout, const std::vector<check::ReadingByHand>& by_hand,
                 Combinations& combinations) {
    std::optional<std::size_t> first;
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        if (!has_fluids(page, layout, i)) continue;
        const std::array<Weights, 2> weights{weights_of_fluid(page, layout, i, Fluid::imperial),
                                             weights_of_fluid(page, layout, i, Fluid::us)};
        combinations.vary(values(true, is_said(by_hand, ByHand::imperial, i), is_said(by_hand, ByHand::us, i)),
                          [&](Shared& one, bool us) {
                              one.fluid[i] = us ? Fluid::us : Fluid::imperial;
                              one.weights += weights[us ? 1 : 0];
                              // A book in three systems has one column of each.
                              if (first && one.fluid[*first] == one.fluid[i])
                                  one.weights[Evidence::habit] += both_alike;
                          });
        if (!first) first = i;
    }
}

bool is_weighed_in_ounces(const Known& known) {
    return !known.liquid && std::ranges::any_of(known.line->columns, [](const Measure& measure) {
        return is_in(measure, UnitWord::ounce) || is_in(measure, UnitWord::pound);
    });
}

std::optional<Ounce> headed_ounce(const Layout& layout) {
    for (const Column& column : layout.columns)
        if (column.whose.ounce) return column.whose.ounce;
    return std::nullopt;
}

}  // namespace

std::vector<Shared> shared_readings(const Page& page, const Layout& layout,
                                    const std::vector<check::ReadingByHand>& by_hand) {
    Combinations combinations;
    vary_fluids(page, layout, by_hand, combinations);
    const bool ounces = std::ranges::any_of(layout.lines, is_weighed_in_ounces);
    const auto headed = headed_ounce(layout);
    combinations.vary(values(ounces, is_said(by_hand, ByHand::avoirdupois), is_said(by_hand, ByHand::apothecaries)),
                      [&](Shared& one, bool apothecaries) {
                          one.ounce = apothecaries ? Ounce::apothecaries : Ounce::avoirdupois;
                          if (headed)
                              one.weights[Evidence::name] += one.ounce == *headed ? 0 : headed_otherwise;
                          else
                              one.weights[Evidence::habit] += apothecaries ? druggists_weight : 0;
                      });
    bool gr = false;
    bool old = false;
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        gr = gr || has_unit(page, i, {UnitWord::grain_or_gram});
        old = old || !layout.columns[i].metric;
    }
    combinations.vary(
        values(gr, is_said(by_hand, ByHand::grain), is_said(by_hand, ByHand::gram)), [&](Shared& one, bool gram) {
            one.gr_is_gram = gram;
            one.weights[Evidence::habit] += gram ? (old ? gram_beside_ounces : 0) : (old ? 0 : grain_beside_grams);
        });
    return std::move(combinations.all);
}

}  // namespace scruple::printed
