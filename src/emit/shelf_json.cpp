// SPDX-License-Identifier: MIT
// A shelf as JSON: docs/schemas/shelf.json says what is in it.
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using json::Value;
using plan::StockItem;
using plan::StockLot;

/// The figure, and the amount itself as a ratio in the same unit.
Value amount(const plan::Figure& figure) {
    Value all = json::figure(figure);
    all["exact"] = figure.exact.ratio_text();
    return all;
}

Value line(const plan::StockLine& line) {
    Value all;
    all["date"] = plan::day_text(line.day);
    all["where"] = line.where;
    return all;
}

std::string_view how(StockLot::How how) {
    switch (how) {
        case StockLot::How::received:
            return "received";
        case StockLot::How::mixed:
            return "mixed";
        case StockLot::How::counted:
            return "counted";
    }
    return "";
}

Value cost(const plan::StockCost& cost) {
    Value all;
    all["sums"] = json::each(cost.sums, [](const auto& sum) {
        Value one;
        one["value"] = json::number(sum.second, 2);
        one["currency"] = sum.first;
        return one;
    });
    all["without_price"] = cost.unpriced;
    return all;
}

Value share(const plan::StockShare& share) {
    Value all;
    all["amount"] = amount(share.amount);
    all["what"] = share.name;
    all["of"] = share.lot;
    all["where"] = share.line.where;
    return all;
}

Value lot(const StockLot& lot) {
    Value all = line(lot.line);
    all["how"] = how(lot.how);
    all["supplier"] = json::text_or_null(lot.supplier);
    all["amount"] = amount(lot.made);
    all["left"] = amount(lot.left);
    all["days_old"] = lot.days_old;
    all["cost"] = cost(lot.cost);
    all["use_by"] = lot.use_by ? Value(plan::day_text(*lot.use_by)) : Value(nullptr);
    all["use_by_because"] = lot.use_by_because;
    all["warnings"] = lot.warnings;
    return all;
}

Value batch(const StockLot& it) {
    Value all = lot(it);
    all["percent_full"] = it.percent_full ? Value(*it.percent_full) : Value(nullptr);
    all["percent_of_capacity_used"] = it.percent_used ? json::number(*it.percent_used, 1) : Value(nullptr);
    all["through"] = it.through;
    all["longer"] = json::text_or_null(it.longer);
    all["made_of"] = json::each(it.from, share);
    return all;
}

Value fault(const plan::StockFault& it) {
    Value all = line(it.line);
    all["what"] = it.name;
    all["wanting"] = amount(it.wanting);
    all["sentence"] = it.sentence;
    all["settled"] = it.settled;
    return all;
}

Value moves(const plan::StockMoves& moves) {
    Value all;
    all["received"] = moves.received.ratio_text();
    all["mixed"] = moves.mixed.ratio_text();
    all["first_count"] = moves.first_count.ratio_text();
    all["corrections"] = moves.corrections.ratio_text();
    all["wanting"] = moves.wanting.ratio_text();
    all["on_hand"] = moves.on_hand.ratio_text();
    all["into_mixing"] = moves.into_mixing.ratio_text();
    all["processed"] = moves.processed.ratio_text();
    all["used"] = moves.used.ratio_text();
    all["replenishing"] = moves.replenishing.ratio_text();
    all["discarded"] = moves.discarded.ratio_text();
    return all;
}

Value chemical(const StockItem& item) {
    Value all;
    all["chemical"] = item.name;
    all["form"] = json::text_or_null(item.form_name);
    all["on_hand"] = amount(item.on_hand);
    all["unit"] = item.by_volume ? "ml" : "g";
    all["book"] = moves(item.moves);
    all["jars"] = json::each(item.lots, lot);
    return all;
}

Value solution(const StockItem& item) {
    Value all;
    all["solution"] = item.name;
    all["on_hand"] = amount(item.on_hand);
    all["unit"] = "ml";
    all["book"] = moves(item.moves);
    all["batches"] = json::each(item.lots, batch);
    return all;
}

Value correction(const plan::StockCorrection& it) {
    Value all = line(it.line);
    all["what"] = it.name;
    all["expected"] = amount(it.expected);
    all["counted"] = amount(it.counted);
    all["by"] = amount(it.by);
    all["first"] = it.first;
    return all;
}

}  // namespace

std::string shelf_json(const plan::StockSheet& shelf) {
    Value all;
    all["kind"] = "shelf";
    all["on"] = plan::day_text(shelf.on);
    all["lines_after"] = shelf.lines_after;
    all["chemicals"] = json::each(shelf.chemicals, chemical);
    all["solutions"] = json::each(shelf.solutions, solution);
    all["corrections"] = json::each(shelf.corrections, correction);
    all["faults"] = json::each(shelf.faults, fault);
    return json::document(all);
}

std::string entry_json(const plan::StockEntry& entry) {
    Value all;
    all["kind"] = "log";
    all["date"] = plan::day_text(entry.line.day);
    all["where"] = entry.line.where;
    all["text"] = entry.text;
    all["takes"] = json::each(entry.shares, share);
    all["corrects"] = json::each(entry.corrections, correction);
    all["faults"] = json::each(entry.faults, fault);
    all["warnings"] = entry.warnings;
    return json::document(all);
}

}  // namespace scruple::emit
