// SPDX-License-Identifier: MIT
#include "drawing.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

// The only plan there is need not be named.
check::Id plan_of(const Call& call, const driver::Loaded& loaded) {
    if (call.words.empty() && loaded.checked.model.plans.size() == 1) return 0;
    return find_plan(loaded, call.name());
}

}  // namespace

Outcome shopping_job(const Call& call) {
    const auto printing = asked_printing(call);
    const As as = printing ? As::text : call.as();
    const driver::Loaded loaded = open_for_the_bench(call);
    const plan::ShoppingList list = plan::shopping_list(loaded.checked.model, plan_of(call, loaded));
    if (printing) return {Exit::fine, drawing().shopping_to_paper(list, *printing), {}};
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
