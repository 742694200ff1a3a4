// SPDX-License-Identifier: MIT
#include "drawing.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome shopping_job(const Call& call) {
    const auto printing = asked_printing(call);
    const bool rows = call.value("--as") == "csv";
    const As as = printing || rows ? As::text : call.as();
    const driver::Loaded loaded = open_for_the_bench(call);
    const plan::ShoppingList list = plan::shopping_list(loaded.checked.model, asked_plan(call, loaded));
    if (printing) return {Exit::fine, drawing().shopping_to_paper(list, *printing), {}};
    if (rows) return {Exit::fine, emit::shopping_csv(list), {}};
    switch (as) {
        case As::text:
            return {Exit::fine, emit::shopping_text(list, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::shopping_html(list), {}};
        case As::json:
            return {Exit::fine, emit::shopping_json(list), {}};
    }
    return {};
}

}  // namespace scruple::cli
