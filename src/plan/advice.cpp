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
constexpr int largest_step_up = 10;   ///< more at once than this is no advice

/// `percent` g in 100 ml, made to `ml`.
struct PercentStock {
    Exact percent, ml;
    std::string solvent;
    bool solubility_known = false;
    [[nodiscard]] Exact grams() const { return percent * ml / 100; }
};

std::string off_by(const Reading& reading) {
    return quantity::significant_text(reading.figure.error_percent, 2) + unit_blank + "%";
}

std::string how_badly(const Measuring& line, std::string_view verb, const std::string& amount) {
    if (line.reading.figure.error_percent > badly_off_percent)
        return fmt::format("the {} cannot {} {} well (off by {})", line.reading.figure.instrument, verb, amount,
                           off_by(line.reading));
    const Exact half = line.reading.instrument->division * 50 / line.exact;
    return fmt::format("the {} can {} {} only to within {}{}%", line.reading.figure.instrument, verb, amount,
                       quantity::significant_text(half, 2), unit_blank);
}

/// The lowest of what is known at room temperature or below, in g of the line form in 100 g of the solvent.
std::optional<Exact> solubility_in(const Measuring& line, std::string_view solvent) {
    const Chemical& chemical = line.model.chemicals[line.addition.chemical];
    std::optional<Exact> lowest;
    for (const Solubility& it : chemical.solubilities) {
        if (it.solvent != solvent || it.in_grams <= 0 || (it.at && it.at->low > 25)) continue;
        Exact grams = it.grams * 100 / it.in_grams;
        if (it.form < chemical.forms.size() && line.addition.form < chemical.forms.size())
            grams = check::as_form(chemical.forms[it.form], chemical.forms[line.addition.form], grams);
        if (!lowest || grams < *lowest) lowest = grams;
    }
    return lowest;
}

/// g in 100 ml made up is a little more than g in 100 g of solvent: a fifth is kept in hand.
bool dissolves(const PercentStock& stock, const std::optional<Exact>& solubility) {
    return !solubility || stock.percent * 5 <= *solubility * 4;
}

bool well_weighed(const Measuring& line, const Exact& grams) {
    const check::Instrument* balance = line.measures.balance_for(grams);
    return balance != nullptr && (grams / balance->division).is_whole() &&
           grams >= honest_divisions * balance->division;
}

bool well_measured(const Measuring& line, const Exact& ml) {
    const Reading reading = line.measures.measured(ml);
    if (reading.instrument == nullptr) return true;
    return reading.figure.error_percent <= 1 && ml >= fewest_divisions * reading.instrument->division;
}

bool serves(const Measuring& line, const PercentStock& stock, const std::optional<Exact>& solubility) {
    const Exact ml = line.exact * 100 / stock.percent;
    return dissolves(stock, solubility) && well_weighed(line, stock.grams()) && ml <= stock.ml &&
           ml * share_of_batch <= line.makes_ml && well_measured(line, ml);
}

std::optional<PercentStock> stock_in(const Measuring& line, std::string_view solvent) {
    static const std::array<Exact, 5> volumes{100, 50, 250, 500, 1000};
    static const std::array<Exact, 7> percents{1, 10, 2, 5, Exact(1, 2), Exact(1, 5), Exact(1, 10)};
    const std::optional<Exact> solubility = solubility_in(line, solvent);
    for (const Exact& ml : volumes)
        for (const Exact& percent : percents)
            if (PercentStock stock{percent, ml, std::string(solvent), solubility.has_value()};
                serves(line, stock, solubility))
                return stock;
    return std::nullopt;
}

std::optional<PercentStock> stock_for(const Measuring& line) {
    if (auto stock = stock_in(line, "water")) return stock;
    for (const Solubility& it : line.model.chemicals[line.addition.chemical].solubilities)
        if (it.solvent != "water")
            if (auto stock = stock_in(line, it.solvent)) return stock;
    return std::nullopt;
}

std::string through_stock(const Measuring& line, const PercentStock& stock) {
    const std::string in = stock.solvent == "water" ? "" : " in " + stock.solvent;
    const Reading take = line.measures.measured(line.exact * 100 / stock.percent);
    std::string text = fmt::format(
        "dissolve {} in {} to make {} ({}{}% w/v{}) and take {}", plain_grams(stock.grams()).with_unit(), stock.solvent,
        plain_ml(stock.ml).with_unit(), quantity::exact_text(stock.percent), unit_blank, in, take.figure.with_unit());
    if (!take.figure.instrument.empty()) text += fmt::format(" ({})", take.figure.instrument);
    if (!stock.solubility_known) text += "; no solubility is recorded for it: see that all of it dissolves";
    return text;
}

/// An instrument of which the amount is ten divisions, or the batch in which it is ten of this one's.
std::string finer_or_larger(const Measuring& line) {
    const Exact times = line.reading.instrument->division * fewest_divisions / line.exact;
    const Exact ml = (line.makes_ml * times).ceil();
    if (times <= largest_step_up)
        return fmt::format("use a finer one, or make {} or more at once", plain_ml(ml).with_unit());
    const Exact division = line.exact / fewest_divisions;
    return fmt::format("use one that reads to {}{}{} or finer", quantity::significant_text(division, 1), unit_blank,
                       line.reading.figure.unit);
}

bool in_water(const Measuring& line) {
    const check::Addition& addition = line.addition;
    if (addition.chemical == check::none) return true;
    return addition.strength.has_value() && (addition.solvent.empty() || addition.solvent == "water");
}

/// `10 ml made up to 100 ml` and ten times as much of that.
std::optional<std::string> thinned(const Measuring& line) {
    for (const int times : {10, 5, 20, 50, 100}) {
        const Exact neat = Exact(100) / times;
        const Exact ml = line.exact * times;
        if (!well_measured(line, neat) || !well_measured(line, ml) || ml > 100 || ml * share_of_batch > line.makes_ml)
            continue;
        const Reading take = line.measures.measured(ml);
        return fmt::format("stir {} of it into water to make {} and take {} ({})", plain_ml(neat).with_unit(),
                           plain_ml(100).with_unit(), take.figure.with_unit(), take.figure.instrument);
    }
    return std::nullopt;
}

std::optional<std::string> in_drops(const Measuring& line) {
    const check::Bench* bench = line.measures.bench();
    if (bench == nullptr || !bench->drops_per_ml) return std::nullopt;
    const Reading drops = line.measures.dropped(line.exact * *bench->drops_per_ml);
    if (drops.figure.error_percent > badly_off_percent || drops.figure.value > 60) return std::nullopt;
    return fmt::format("count {} from the dropper (it was measured with water)", drops.figure.with_unit());
}

}  // namespace

std::vector<std::string> weighing_advice(const Measuring& line) {
    if (!badly_measured(line.reading)) return {};
    const std::string complaint = how_badly(line, "weigh", plain_grams(line.exact).with_unit());
    const auto stock = stock_for(line);
    return {complaint + ": " + (stock ? through_stock(line, *stock) : finer_or_larger(line))};
}

std::vector<std::string> measuring_advice(const Measuring& line) {
    if (!badly_measured(line.reading)) return {};
    const std::string complaint = how_badly(line, "measure", plain_ml(line.exact).with_unit()) + ": ";
    if (in_water(line)) {
        if (const auto text = in_drops(line)) return {complaint + *text};
        if (const auto text = thinned(line)) return {complaint + *text};
    }
    return {complaint + finer_or_larger(line)};
}

}  // namespace scruple::plan
