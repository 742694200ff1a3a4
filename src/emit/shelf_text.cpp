// SPDX-License-Identifier: MIT
#include <algorithm>

#include "layout.hpp"
#include "scruple/emit/shelf_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using plan::StockItem;
using plan::StockLot;
using plan::StockSheet;

constexpr std::string_view gap = "   ";

/// Amounts of both blocks stand in one column.
AmountColumn column_for(const StockSheet& sheet) {
    AmountColumn column;
    for (const StockItem* item : words::there_is(sheet.chemicals))
        column.make_room(item->on_hand.text, item->on_hand.unit);
    for (const StockItem* item : words::there_is(sheet.solutions))
        for (const StockLot& lot : item->lots) column.make_room(lot.left.text, lot.left.unit);
    return column;
}

std::string lead_of(const AmountColumn& column, const plan::Figure& figure) {
    return column.line(figure.text, figure.unit) + std::string(gap);
}

void chemicals(Sheet& sheet, const StockSheet& shelf, const AmountColumn& column) {
    const auto items = words::there_is(shelf.chemicals);
    if (items.empty()) return;
    sheet.heading(words::chemicals_heading);
    const std::string indent(column.width() + gap.size(), ' ');
    for (const StockItem* item : items) {
        const bool one = item->lots.size() == 1;
        sheet.item(lead_of(column, item->on_hand), words::chemical(item->name, item->form_name));
        for (const StockLot& lot : item->lots)
            sheet.item(indent + (one ? "" : "- "), words::jar_words(lot, one), words::lot_cost(lot));
    }
}

void solutions(Sheet& sheet, const StockSheet& shelf, const AmountColumn& column) {
    const auto items = words::there_is(shelf.solutions);
    if (items.empty()) return;
    sheet.heading(words::solutions_heading);
    const std::string indent(column.width() + gap.size(), ' ');
    for (const StockItem* item : items)
        for (const StockLot& lot : item->lots) {
            sheet.item(lead_of(column, lot.left), item->name, words::lot_cost(lot));
            sheet.item(indent, words::batch_words(lot));
            for (const std::string& warning : lot.warnings) sheet.item(indent + "! ", warning);
            for (const std::string& remark : words::lot_remarks(lot))
                sheet.item(indent, words::with_units_kept(remark));
            const auto sources = words::lot_sources(lot);
            if (!sources.empty()) sheet.item(indent, words::made_of);
            for (const std::string& source : sources) sheet.item(indent + "- ", source);
            sheet.blank();
        }
}

void corrections(Sheet& sheet, const StockSheet& shelf) {
    const auto all = words::corrected(shelf);
    if (all.empty()) return;
    sheet.heading(words::counted_heading);
    for (const auto* it : all) {
        sheet.item(plan::day_text(it->line.day) + std::string(gap), words::correction(*it),
                   words::signed_amount(it->by));
    }
}

}  // namespace

std::string shelf_text(const StockSheet& shelf, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", words::shelf_title(shelf));
    for (const std::string& remark : words::shelf_remarks(shelf)) sheet.item("", remark);
    const AmountColumn column = column_for(shelf);
    if (column.number == 0) sheet.item("", words::nothing_there);
    chemicals(sheet, shelf, column);
    solutions(sheet, shelf, column);
    corrections(sheet, shelf);
    const auto faults = words::shortages(shelf);
    if (!faults.empty()) sheet.heading(words::shortages_heading);
    for (const std::string& fault : faults) sheet.item("! ", fault);
    return sheet.take();
}

std::string entry_text(const plan::StockEntry& entry, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", words::entry_head(entry));
    sheet.item("", entry.text.substr(std::min(entry.text.find_first_not_of(" \t"), entry.text.size())));
    sheet.blank();
    AmountColumn column;
    for (const auto& share : entry.shares) column.make_room(share.amount.text, share.amount.unit);
    if (!entry.shares.empty()) sheet.item("", words::takes);
    for (const auto& share : entry.shares) sheet.item(lead_of(column, share.amount), share.name + ", " + share.lot);
    for (const auto& it : entry.corrections) sheet.item("", words::correction(it), words::signed_amount(it.by));
    for (const auto& fault : entry.faults) sheet.item("! ", words::not_there(fault));
    return sheet.take();
}

}  // namespace scruple::emit
