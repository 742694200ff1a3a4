// SPDX-License-Identifier: MIT
#include "stock_lots.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "capacity.hpp"
#include "lasting.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::plan {

using check::CapacityRule;
using check::Day;
using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;

namespace {

StockLot::How how_it_came(const LogEntry& line) {
    if (line.what == LogEntry::What::mixed) return StockLot::How::mixed;
    return line.what == LogEntry::What::received ? StockLot::How::received : StockLot::How::counted;
}

std::string lot_words(const Model& model, const Lot& lot) {
    const LogEntry& line = model.log[lot.line];
    const std::string day = day_text(line.day);
    switch (how_it_came(line)) {
        case StockLot::How::received:
            return fmt::format(
                "jar of {}{}", day,
                line.supplier == check::none ? "" : fmt::format(" from {}", model.suppliers[line.supplier].name));
        case StockLot::How::mixed:
            return "batch of " + day;
        case StockLot::How::counted:
            return "counted on " + day;
    }
    return {};
}

/// In percent; nullopt where its recipe sets no end to it, or it is used once.
std::optional<Exact> percent_used(const Model& model, const Lot& lot) {
    const auto& replenish = model.sections[lot.what.solution].replenish;
    if (replenish) {
        if (!replenish->at_most_ml || !replenish->at_most_per_ml || replenish->at_most_ml->is_zero()) return {};
        return lot.replenished * 100 * *replenish->at_most_per_ml / (*replenish->at_most_ml * lot.left);
    }
    const auto& rules = check::capacity_of(model, lot.what.solution);
    if (rules.empty() || says(rules, CapacityRule::What::one_shot)) return {};
    return lot.spent * 100 / lot.made;
}

std::string through_words(const Through& through) {
    if (through.what.empty()) return plain(through.count / 10000, "m²").with_unit();
    std::string what(through.what);
    const auto blank = std::min(what.find(' '), what.size());
    const bool plural = blank > 0 && what[blank - 1] == 's';
    if (plural && through.count == 1) what.erase(blank - 1, 1);
    if (!plural && through.count != 1) what.insert(blank, "s");
    return quantity::exact_text(through.count) + " " + what;
}

std::string days_words(int days) {
    return fmt::format("{} {}", days, days == 1 ? "day" : "days");
}

/// `past its use-by date of 2027-01-05 by 3 days`; empty where it is not, or nobody knows. What is empty now was as
/// good as empty before.
std::string days_past(const Model& model, const Lot& lot, Day on) {
    const LogEntry& line = model.log[lot.line];
    if (line.what != LogEntry::What::mixed) return {};
    const auto limit = use_by(model.sections[lot.what.solution], line.day, lot.left / lot.made).day;
    if (!limit || *limit >= on) return {};
    return fmt::format("past its use-by date of {} by {}", day_text(*limit), days_words(on - *limit));
}

void say_age(const Model& model, const Lot& lot, Day on, StockLot& row) {
    const LogEntry& line = model.log[lot.line];
    if (row.how == StockLot::How::counted) {
        row.use_by_because = "the log does not say when it was mixed";
        return;
    }
    row.percent_full = static_cast<int>((lot.left * 100 / lot.made).rounded_to(1).to_double());
    const UseBy limit = use_by(model.sections[lot.what.solution], line.day, lot.left / lot.made);
    row.use_by = limit.day;
    row.use_by_because = limit.because;
    if (std::string late = days_past(model, lot, on); !late.empty()) row.warnings.push_back(std::move(late));
}

void say_how_long_a_jar_keeps(const Model& model, const Lot& lot, Day on, StockLot& row) {
    const auto& keeps = model.chemicals[lot.what.ware.chemical].keeps;
    if (!keeps) return;
    if (row.how == StockLot::How::counted) {
        row.use_by_because = "the log does not say when it came";
        return;
    }
    row.use_by = last_day(model.log[lot.line].day, keeps->seconds.low, keeps->text);
    row.use_by_because = keeps->text;
    if (*row.use_by < on)
        row.warnings.push_back(
            fmt::format("past its use-by date of {} by {}", day_text(*row.use_by), days_words(on - *row.use_by)));
}

void say_use(const Model& model, const Lot& lot, StockLot& row) {
    for (const Through& through : lot.through) row.through.push_back(through_words(through));
    if (lot.longer.any()) row.longer = longer_words(lot.longer);
    row.percent_used = percent_used(model, lot);
    if (!row.percent_used || *row.percent_used < 100) return;
    const bool is_past = *row.percent_used > 100;
    const bool replenished = static_cast<bool>(model.sections[lot.what.solution].replenish);
    row.warnings.push_back(fmt::format(
        "{}{}", replenished ? "it has been given as much replenisher as it may get" : "its capacity is used up",
        is_past ? ", and more" : ""));
}

}  // namespace

StockLine line_at(const Model& model, LineId line) {
    return {model.log[line].place, model.log[line].day};
}

StockLot stock_lot(const Model& model, const Lot& lot, Day on) {
    const LogEntry& line = model.log[lot.line];
    StockLot row;
    row.how = how_it_came(line);
    row.line = line_at(model, lot.line);
    if (line.supplier != check::none) row.supplier = model.suppliers[line.supplier].name;
    row.left = stocked_figure(lot.what, lot.left);
    row.made = stocked_figure(lot.what, lot.made);
    row.days_old = on - line.day;
    if (lot.what.solution == check::none) {
        say_how_long_a_jar_keeps(model, lot, on, row);
        return row;
    }
    say_age(model, lot, on, row);
    say_use(model, lot, row);
    return row;
}

StockCost stock_cost(const Model& model, const Worth& worth, const Exact& share) {
    StockCost cost;
    for (const auto& [currency, sum] : worth.sums) cost.sums.emplace_back(currency, sum * share);
    for (const Stocked& what : worth.unpriced) cost.unpriced.push_back(stocked_words(model, what));
    std::ranges::sort(cost.unpriced);
    return cost;
}

std::vector<StockShare> stock_shares(const Model& model, const Lots& lots, std::uint32_t first, std::uint32_t end) {
    std::vector<std::pair<LotId, Exact>> sums;
    std::map<LotId, std::size_t> known;
    for (auto i = first; i < end; ++i) {
        const Pouring& part = lots.pourings[i];
        const auto [at, is_new] = known.try_emplace(part.of, sums.size());
        if (is_new)
            sums.emplace_back(part.of, part.measure);
        else
            sums[at->second].second += part.measure;
    }
    std::vector<StockShare> shares;
    for (const auto& [id, measure] : sums) {
        const Lot& lot = lots.lots[id];
        shares.push_back({stocked_figure(lot.what, measure), stocked_words(model, lot.what), lot_words(model, lot),
                          line_at(model, lot.line)});
    }
    return shares;
}

std::vector<std::string> stock_warnings(const Model& model, const Lots& lots, std::uint32_t first, std::uint32_t end,
                                        Day on) {
    std::set<LotId> bottles;
    for (auto i = first; i < end; ++i)
        if (lots.lots[lots.pourings[i].of].what.solution != check::none) bottles.insert(lots.pourings[i].of);
    std::vector<std::string> sentences;
    for (const LotId id : bottles) {
        const Lot& lot = lots.lots[id];
        const auto late = days_past(model, lot, on);
        if (!late.empty())
            sentences.push_back(
                fmt::format("{}, {}, is {}", stocked_words(model, lot.what), lot_words(model, lot), late));
    }
    return sentences;
}

}  // namespace scruple::plan
