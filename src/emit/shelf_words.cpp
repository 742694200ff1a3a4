// SPDX-License-Identifier: MIT
#include "scruple/emit/shelf_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/emit/shopping_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit::words {

using plan::StockCorrection;
using plan::StockItem;
using plan::StockLot;
using plan::StockSheet;

namespace {

std::size_t with_warnings(const std::vector<StockItem>& items) {
    std::size_t count = 0;
    for (const StockItem& item : items)
        count += static_cast<std::size_t>(
            std::ranges::count_if(item.lots, [](const StockLot& lot) { return !lot.warnings.empty(); }));
    return count;
}

/// How much of what came, when and from where.
std::string came_words(const StockLot& lot, bool alone) {
    const bool whole = lot.left.exact == lot.made.exact && lot.left.unit == lot.made.unit;
    std::vector<std::string> words;
    if (!alone) words.push_back(lot.left.with_unit());
    if (!whole) words.push_back("of " + lot.made.with_unit());
    words.push_back((lot.how == StockLot::How::received ? "received " : "counted ") + plan::day_text(lot.line.day));
    if (!lot.supplier.empty()) words.push_back("from " + lot.supplier);
    return listed(words, " ");
}

std::string counted_words(std::size_t count, std::string_view one, std::string_view several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

std::string use_by_words(const StockLot& lot) {
    if (!lot.use_by) return "no use-by date: " + lot.use_by_because;
    return fmt::format("use by {} ({})", plan::day_text(*lot.use_by), lot.use_by_because);
}

std::string use_words(const StockLot& lot) {
    if (lot.through.empty() && lot.percent_used->is_zero()) return "nothing has gone through it";
    std::vector<std::string> words;
    if (!lot.through.empty()) words.push_back("through it: " + listed(lot.through));
    if (lot.percent_used)
        words.push_back(
            fmt::format("{}{}% of its capacity used", quantity::decimal_text(*lot.percent_used, 0), plan::unit_blank));
    if (!lot.longer.empty()) words.push_back("what comes next takes " + lot.longer);
    return listed(words, "; ");
}

}  // namespace

std::string shelf_title(const StockSheet& sheet) {
    return "On the shelf on " + plan::day_text(sheet.on);
}

std::vector<std::string> shelf_remarks(const StockSheet& sheet) {
    std::vector<std::string> remarks;
    if (sheet.last_of_log) remarks.emplace_back("the last day of the log; `--on` asks for another");
    if (sheet.lines_after > 0)
        remarks.push_back(counted_words(sheet.lines_after, "line of the log is later, and does not count",
                                        "lines of the log are later, and do not count"));
    if (const auto jars = with_warnings(sheet.chemicals))
        remarks.push_back(counted_words(jars, "jar wants", "jars want") + " attention, marked with ! below");
    if (const auto bottles = with_warnings(sheet.solutions))
        remarks.push_back(counted_words(bottles, "bottle wants", "bottles want") + " attention, marked with ! below");
    if (const auto lines = shortages(sheet).size())
        remarks.push_back(counted_words(lines, "line takes", "lines take") + " more than there was: see the end");
    return remarks;
}

std::string jar_words(const StockLot& lot, bool alone) {
    std::vector<std::string> words{came_words(lot, alone)};
    if (!lot.use_by_because.empty()) words.push_back(use_by_words(lot));
    for (const std::string& warning : lot.warnings) words.push_back("! " + warning);
    return listed(words, "; ");
}

std::string batch_words(const StockLot& lot) {
    if (lot.how != StockLot::How::mixed) return came_words(lot, true);
    const auto days = static_cast<std::size_t>(lot.days_old);
    return fmt::format("mixed {}, {} old, {}{}% full", plan::day_text(lot.line.day), counted_words(days, "day", "days"),
                       lot.percent_full.value_or(0), plan::unit_blank);
}

std::vector<std::string> lot_remarks(const StockLot& lot) {
    std::vector<std::string> remarks;
    if (!lot.use_by_because.empty()) remarks.push_back(use_by_words(lot));
    if (!lot.through.empty() || lot.percent_used) remarks.push_back(use_words(lot));
    if (!lot.cost.unpriced.empty() && !lot.cost.sums.empty())
        remarks.push_back("not in its cost: " + listed(lot.cost.unpriced));
    return remarks;
}

std::vector<std::string> lot_sources(const StockLot& lot) {
    std::vector<std::string> sources;
    for (const auto& share : lot.from)
        sources.push_back(fmt::format("{} {}, {}", share.amount.with_unit(), share.name, share.lot));
    return sources;
}

std::string lot_cost(const StockLot& lot) {
    const bool all_known = lot.cost.unpriced.empty();
    std::vector<std::string> sums;
    for (const auto& [currency, sum] : lot.cost.sums) {
        const bool shows = sum.is_zero() || sum >= quantity::Exact(1, 200);
        if (shows || all_known) sums.push_back(shows ? money(sum, currency) : "below " + money({1, 100}, currency));
    }
    if (sums.empty()) return all_known ? "" : "no price";
    return (all_known ? "" : "at least ") + listed(sums, " + ");
}

std::string with_cost(const std::string& words, const StockLot& lot) {
    const std::string cost = lot_cost(lot);
    return cost.empty() ? words : words + "; " + cost;
}

std::vector<const StockItem*> there_is(const std::vector<StockItem>& items) {
    std::vector<const StockItem*> some;
    for (const StockItem& item : items)
        if (!item.lots.empty()) some.push_back(&item);
    return some;
}

std::vector<const StockCorrection*> corrected(const StockSheet& sheet) {
    std::vector<const StockCorrection*> some;
    for (const StockCorrection& it : sheet.corrections)
        if (!it.first) some.push_back(&it);
    return some;
}

std::string correction(const StockCorrection& it) {
    const bool below_nothing = it.expected.value < 0;
    return fmt::format("{}: {} counted, {} by the log", it.name, it.counted.with_unit(),
                       below_nothing ? signed_amount(it.expected) : it.expected.with_unit());
}

std::string signed_amount(const plan::Figure& figure) {
    const bool less = figure.text.starts_with('-');
    return (less ? "−" + figure.text.substr(1) : "+" + figure.text) + plan::unit_blank + figure.unit;
}

std::vector<std::string> shortages(const StockSheet& sheet) {
    std::vector<std::string> lines;
    for (const auto& fault : sheet.faults)
        if (!fault.settled) lines.push_back(fmt::format("{}: {}", fault.line.where, fault.sentence));
    return lines;
}

std::string entry_head(const plan::StockEntry& entry) {
    return "Written: " + entry.line.where;
}

std::string not_there(const plan::StockFault& fault) {
    return fmt::format("by the log the shelf has {} {} too little for it", fault.wanting.with_unit(), fault.name);
}

}  // namespace scruple::emit::words
