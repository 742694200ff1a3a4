// SPDX-License-Identifier: MIT
#include "scruple/plan/stock_sheet.hpp"

#include <algorithm>
#include <tuple>

#include "stock_lots.hpp"

namespace scruple::plan {

using check::Day;
using check::Id;
using check::Model;

namespace {

StockMoves moves_of(const Pile& pile) {
    const Account& all = pile.account;
    return {all.received,  all.mixed, all.first_count,  all.corrections, all.wanting, all.into_mixing,
            all.processed, all.used,  all.replenishing, all.discarded,   pile.held};
}

StockItem item_of(const Model& model, const Stocked& what, const Pile& pile) {
    StockItem item;
    item.on_hand = stocked_figure(what, pile.held);
    item.by_volume = what.by_volume();
    item.moves = moves_of(pile);
    if (what.solution != check::none) {
        item.name = check::shown_name(model, what.solution);
        return item;
    }
    item.name = model.chemicals[what.ware.chemical].name;
    item.form_name = form_words(model, what.ware);
    return item;
}

StockCorrection correction_of(const Model& model, const Correction& it) {
    return {line_at(model, it.line),
            stocked_words(model, it.what),
            stocked_figure(it.what, it.expected),
            stocked_figure(it.what, it.counted),
            stocked_figure(it.what, it.counted - it.expected),
            it.first};
}

StockFault fault_of(const Model& model, const Shortage& it) {
    return {line_at(model, it.line), stocked_words(model, it.what), stocked_figure(it.what, it.wanting),
            shortage_words(model, it), it.settled};
}

class Sheeting {
  public:
    Sheeting(const Model& model, Day on) : model_(model), lots_(lots_on(model, on)) { sheet_.on = on; }

    StockSheet run() {
        for (const auto& [what, pile] : lots_.piles)
            for (std::size_t i = pile.oldest; i < pile.lots.size(); ++i) standing_.push_back(pile.lots[i]);
        worth_ = worth_of(model_, lots_, standing_);
        for (const auto& [what, pile] : lots_.piles) add(what, pile);
        const auto by_name = [](const StockItem& item) { return std::tie(item.name, item.form_name); };
        std::ranges::stable_sort(sheet_.chemicals, {}, by_name);
        std::ranges::stable_sort(sheet_.solutions, {}, by_name);
        for (const auto& it : lots_.corrections) sheet_.corrections.push_back(correction_of(model_, it));
        for (const auto& shortage : lots_.shortages) sheet_.faults.push_back(fault_of(model_, shortage));
        sheet_.lines_after = static_cast<std::size_t>(
            std::ranges::count_if(model_.log, [this](const check::LogEntry& line) { return line.day > sheet_.on; }));
        return std::move(sheet_);
    }

  private:
    void add(const Stocked& what, const Pile& pile) {
        StockItem item = item_of(model_, what, pile);
        for (std::size_t i = pile.oldest; i < pile.lots.size(); ++i) {
            const Lot& lot = lots_.lots[pile.lots[i]];
            if (lot.left.is_zero()) continue;
            StockLot row = stock_lot(model_, lot, sheet_.on);
            row.cost = stock_cost(model_, worth_.at(pile.lots[i]), lot.left / lot.made);
            row.from = stock_shares(model_, lots_, lot.first, lot.end);
            item.lots.push_back(std::move(row));
        }
        (what.solution == check::none ? sheet_.chemicals : sheet_.solutions).push_back(std::move(item));
    }

    const Model& model_;
    Lots lots_;
    std::vector<LotId> standing_;
    std::map<LotId, Worth> worth_;
    StockSheet sheet_;
};

}  // namespace

StockSheet stock_sheet(const Model& model, std::optional<Day> on) {
    const Day last = model.log.empty() ? 0 : model.log.back().day;
    StockSheet sheet = Sheeting(model, on.value_or(last)).run();
    sheet.last_of_log = !on;
    return sheet;
}

StockEntry stock_entry(const Model& model, std::size_t line) {
    const Lots lots = lots_on(model, model.log[line].day);
    const auto id = static_cast<LineId>(line);
    StockEntry entry{.line = line_at(model, id), .text = {}, .shares = {}, .corrections = {}, .faults = {}};
    const auto& marks = lots.pourings_before;
    const auto end = line + 1 < marks.size() ? marks[line + 1] : lots.pourings_so_far();
    const bool counts = model.log[line].what == check::LogEntry::What::on_shelf;
    if (!counts) entry.shares = stock_shares(model, lots, marks[line], end);
    for (const auto& it : of_line(lots.corrections, id)) entry.corrections.push_back(correction_of(model, it));
    for (const auto& it : of_line(lots.shortages, id)) entry.faults.push_back(fault_of(model, it));
    return entry;
}

}  // namespace scruple::plan
