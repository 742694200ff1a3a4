// SPDX-License-Identifier: MIT
#include "advice.hpp"

#include <fmt/format.h>

#include <array>
#include <optional>

#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Exact;
using check::Solubility;

constexpr int honest_divisions = 50;  ///< a weighing of so many is good to 1 %
constexpr int fewest_divisions = 10;  ///< half a division is then 5 %
constexpr int share_of_batch = 4;     ///< a stock takes up no more than a quarter

/// `percent` g in 100 ml, made to `ml`.
struct Stock {
    Exact percent, ml;
    std::string solvent;
    bool solubility_known = false;
    [[nodiscard]] Exact grams() const { return percent * ml / 100; }
};

std::string off_by(const Reading& reading) {
    return quantity::significant_text(reading.figure.error_percent, 2) + unit_blank + "%";
}

std::string how_badly(const Wanted& wanted, std::string_view verb, const std::string& amount) {
    if (wanted.reading.figure.error_percent > badly_off_percent)
        return fmt::format("the {} cannot {} {} well (off by {})", wanted.reading.figure.instrument, verb, amount,
                           off_by(wanted.reading));
    const Exact half = wanted.reading.instrument->division * 50 / wanted.exact;
    return fmt::format("the {} can {} {} only to within {}{}%", wanted.reading.figure.instrument, verb, amount,
                       quantity::significant_text(half, 2), unit_blank);
}

/// The lowest of what is known at room temperature or below, in g of the wanted form in 100 g of the solvent.
std::optional<Exact> solubility_in(const Wanted& wanted, std::string_view solvent) {
    const Chemical& chemical = wanted.model.chemicals[wanted.addition.chemical];
    std::optional<Exact> lowest;
    for (const Solubility& it : chemical.solubilities) {
        if (it.solvent != solvent || it.in_grams <= 0 || (it.at && it.at->low > 25)) continue;
        Exact grams = it.grams * 100 / it.in_grams;
        if (it.form < chemical.forms.size() && wanted.addition.form < chemical.forms.size())
            grams = check::as_form(chemical.forms[it.form], chemical.forms[wanted.addition.form], grams);
        if (!lowest || grams < *lowest) lowest = grams;
    }
    return lowest;
}

/// g in 100 ml made up is a little more than g in 100 g of solvent: a fifth is kept in hand.
bool dissolves(const Stock& stock, const std::optional<Exact>& solubility) {
    return !solubility || stock.percent * 5 <= *solubility * 4;
}

bool well_weighed(const Wanted& wanted, const Exact& grams) {
    const check::Instrument* balance = wanted.measures.balance_for(grams);
    return balance != nullptr && (grams / balance->division).is_whole() &&
           grams >= honest_divisions * balance->division;
}

bool well_measured(const Wanted& wanted, const Exact& ml) {
    const Reading reading = wanted.measures.measured(ml);
    if (reading.instrument == nullptr) return true;
    return reading.figure.error_percent <= 1 && ml >= fewest_divisions * reading.instrument->division;
}

bool serves(const Wanted& wanted, const Stock& stock, const std::optional<Exact>& solubility) {
    const Exact ml = wanted.exact * 100 / stock.percent;
    return dissolves(stock, solubility) && well_weighed(wanted, stock.grams()) && ml <= stock.ml &&
           ml * share_of_batch <= wanted.makes_ml && well_measured(wanted, ml);
}

std::optional<Stock> stock_in(const Wanted& wanted, std::string_view solvent) {
    static const std::array<Exact, 5> volumes{100, 50, 250, 500, 1000};
    static const std::array<Exact, 7> percents{1, 10, 2, 5, Exact(1, 2), Exact(1, 5), Exact(1, 10)};
    const std::optional<Exact> solubility = solubility_in(wanted, solvent);
    for (const Exact& ml : volumes)
        for (const Exact& percent : percents)
            if (Stock stock{percent, ml, std::string(solvent), solubility.has_value()};
                serves(wanted, stock, solubility))
                return stock;
    return std::nullopt;
}

std::optional<Stock> stock_for(const Wanted& wanted) {
    if (auto stock = stock_in(wanted, "water")) return stock;
    for (const Solubility& it : wanted.model.chemicals[wanted.addition.chemical].solubilities)
        if (it.solvent != "water")
            if (auto stock = stock_in(wanted, it.solvent)) return stock;
    return std::nullopt;
}

std::string through_stock(const Wanted& wanted, const Stock& stock) {
    const std::string in = stock.solvent == "water" ? "" : " in " + stock.solvent;
    const Reading take = wanted.measures.measured(wanted.exact * 100 / stock.percent);
    std::string text = fmt::format(
        "dissolve {} in {} to make {} ({}{}% w/v{}) and take {}", plain_grams(stock.grams()).with_unit(), stock.solvent,
        plain_ml(stock.ml).with_unit(), quantity::exact_text(stock.percent), unit_blank, in, take.figure.with_unit());
    if (!take.figure.instrument.empty()) text += fmt::format(" ({})", take.figure.instrument);
    if (!stock.solubility_known) text += "; no solubility is recorded for it: see that all of it dissolves";
    return text;
}

/// The batch in which the amount is ten divisions of the instrument.
std::string larger_batch(const Wanted& wanted) {
    const Exact needed = wanted.reading.instrument->division * fewest_divisions;
    const Exact ml = wanted.makes_ml * needed / wanted.exact;
    return fmt::format("use a finer one, or make {} or more at once", plain_ml(ml.ceil()).with_unit());
}

bool in_water(const Wanted& wanted) {
    const check::Addition& addition = wanted.addition;
    if (addition.chemical == check::none) return true;
    return addition.strength.has_value() && (addition.solvent.empty() || addition.solvent == "water");
}

/// `10 ml made up to 100 ml` and ten times as much of that.
std::optional<std::string> thinned(const Wanted& wanted) {
    for (const int times : {10, 5, 20, 50, 100}) {
        const Exact neat = Exact(100) / times;
        const Exact ml = wanted.exact * times;
        if (!well_measured(wanted, neat) || !well_measured(wanted, ml) || ml > 100 ||
            ml * share_of_batch > wanted.makes_ml)
            continue;
        const Reading take = wanted.measures.measured(ml);
        return fmt::format("stir {} of it into water to make {} and take {} ({})", plain_ml(neat).with_unit(),
                           plain_ml(100).with_unit(), take.figure.with_unit(), take.figure.instrument);
    }
    return std::nullopt;
}

std::optional<std::string> in_drops(const Wanted& wanted) {
    const check::Bench* bench = wanted.measures.bench();
    if (bench == nullptr || !bench->drops_per_ml) return std::nullopt;
    const Reading drops = wanted.measures.dropped(wanted.exact * *bench->drops_per_ml);
    if (drops.figure.error_percent > badly_off_percent || drops.figure.value > 60) return std::nullopt;
    return fmt::format("count {} from the dropper (it was measured with water)", drops.figure.with_unit());
}

}  // namespace

std::vector<std::string> weighing_advice(const Wanted& wanted) {
    if (!badly_measured(wanted.reading)) return {};
    const std::string complaint = how_badly(wanted, "weigh", plain_grams(wanted.exact).with_unit());
    const auto stock = stock_for(wanted);
    return {complaint + ": " + (stock ? through_stock(wanted, *stock) : larger_batch(wanted))};
}

std::vector<std::string> measuring_advice(const Wanted& wanted) {
    if (!badly_measured(wanted.reading)) return {};
    const std::string complaint = how_badly(wanted, "measure", plain_ml(wanted.exact).with_unit()) + ": ";
    if (in_water(wanted)) {
        if (const auto text = in_drops(wanted)) return {complaint + *text};
        if (const auto text = thinned(wanted)) return {complaint + *text};
    }
    return {complaint + larger_batch(wanted)};
}

}  // namespace scruple::plan
