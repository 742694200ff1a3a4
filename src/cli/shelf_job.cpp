// SPDX-License-Identifier: MIT
#include "batch.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "line_places.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

void name_places(const driver::Loaded& loaded, plan::StockSheet& shelf) {
    LinePlaces places(loaded);
    const auto name = [&places](plan::StockLine& line) { line.where = places.where(line.place); };
    for (auto* items : {&shelf.chemicals, &shelf.solutions})
        for (auto& item : *items)
            for (auto& lot : item.lots) {
                name(lot.line);
                for (auto& share : lot.from) name(share.line);
            }
    for (auto& correction : shelf.corrections) name(correction.line);
    for (auto& fault : shelf.faults) name(fault.line);
}

}  // namespace

Outcome shelf_job(const Call& call) {
    if (!call.words.empty())
        throw Stop{Exit::wrong_call, "`scruple shelf` takes no name: it tells of all that is there"};
    const auto printing = asked_printing(call);
    const As as = printing ? As::text : call.as();
    const auto on = asked_day(call, "--on");
    const driver::Loaded& loaded = open_for_the_bench(call);
    if (loaded.checked.model.log.empty())
        throw Stop{Exit::wrong_call,
                   "no file has a `log` with a line in it; `scruple help log` shows how it is written"};
    plan::StockSheet shelf = plan::stock_sheet(loaded.checked.model, on);
    name_places(loaded, shelf);
    if (printing) return {Exit::fine, drawing().shelf_to_paper(shelf, *printing), {}};
    switch (as) {
        case As::text:
            return {Exit::fine, emit::shelf_text(shelf, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::shelf_html(shelf), {}};
        case As::json:
            return {Exit::fine, emit::shelf_json(shelf), {}};
    }
    return {};
}

}  // namespace scruple::cli
