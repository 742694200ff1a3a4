// SPDX-License-Identifier: MIT
#include "batch.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome calendar_job(const Call& call) {
    const bool events = call.value("--as") == "ics";
    const auto printing = asked_printing(call);
    const As as = events || printing ? As::text : call.as();
    const driver::Loaded& loaded = open_for_the_bench(call);
    const auto calendar =
        plan::mixing_calendar(loaded.checked.model, asked_plan(call, loaded), asked_bench(call, loaded));
    if (printing) return {Exit::fine, drawing().calendar_to_paper(calendar, *printing), {}};
    if (events) return {Exit::fine, emit::calendar_ics(calendar), {}};
    switch (as) {
        case As::text:
            return {Exit::fine, emit::calendar_text(calendar, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::calendar_html(calendar), {}};
        case As::json:
            return {Exit::fine, emit::calendar_json(calendar), {}};
    }
    return {};
}

}  // namespace scruple::cli
