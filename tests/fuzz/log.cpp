// SPDX-License-Identifier: MIT
// The shelf by whatever log a text has: on each account what came is what went and what is there, exactly.
#include <algorithm>
#include <cstdint>

#include "demand.hpp"
#include "scruple/emit/emit.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

constexpr std::size_t most_entries = 8;

/// g or ml of a figure that may be shown in kg or l.
check::Exact in_base_unit(const plan::Figure& figure) {
    return figure.unit == "kg" || figure.unit == "l" ? figure.exact * 1000 : figure.exact;
}

void demand_balance(const plan::StockItem& item) {
    const plan::StockMoves& of = item.moves;
    fuzz::demand(of.received + of.mixed + of.first_count + of.corrections + of.wanting ==
                     of.on_hand + of.into_mixing + of.processed + of.used + of.replenishing + of.discarded,
                 "what came is what went and what is there", item.name);
    fuzz::demand(of.on_hand >= 0 && of.wanting >= 0, "nothing is less than nothing", item.name);
    check::Exact sum;
    for (const plan::StockLot& lot : item.lots) sum += in_base_unit(lot.left);
    fuzz::demand(item.lots.empty() || sum == of.on_hand, "the jars are what is there", item.name);
}

void print_shelf(const check::Model& model, std::optional<check::Day> on) {
    const plan::StockSheet sheet = plan::stock_sheet(model, on);
    std::ranges::for_each(sheet.chemicals, demand_balance);
    std::ranges::for_each(sheet.solutions, demand_balance);
    fuzz::demand_text("a shelf is text", emit::shelf_text(sheet, {80}));
    fuzz::demand_page("a shelf is a page", emit::shelf_html(sheet));
    fuzz::demand_json("a shelf is JSON", emit::shelf_json(sheet));
}

void print_entry(const check::Model& model, std::size_t line) {
    const plan::StockEntry entry = plan::stock_entry(model, line);
    fuzz::demand_page("an entry is a page", emit::entry_html(entry));
    fuzz::demand_json("an entry is JSON", emit::entry_json(entry));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    if (!workspace.take_what_is_right({data, data + size})) return 0;
    const check::Model& model = workspace.model();
    if (model.log.empty()) return 0;
    print_shelf(model, std::nullopt);
    print_shelf(model, model.log[model.log.size() / 2].day);
    for (std::size_t i = 0; i < std::min(model.log.size(), most_entries); ++i) print_entry(model, i);
    return 0;
}
