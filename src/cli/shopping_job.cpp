// SPDX-License-Identifier: MIT
#include "drawing.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "what_if.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

plan::ShoppingList asked_list(const Call& call) {
    driver::Loaded& loaded = open_for_the_bench(call, asked_work(call));
    auto work = take_asked_work(loaded);
    check::Model& model = loaded.checked.model;
    const check::Id plan = asked_plan(call, loaded);
    const auto against = call.value("--against");
    const check::Id other = against ? find_plan(loaded, *against) : check::none;
    plan::ShoppingList list = plan::shopping_list(model, plan);
    if (call.has("--with") || call.has("--without")) {
        change_plan(call, model, plan, std::move(work));
        plan::ShoppingList changed = plan::shopping_list(model, plan);
        say_what_differs(changed, list, "the plan as it is written");
        list = std::move(changed);
    }
    if (against) say_what_differs(list, plan::shopping_list(model, other), std::string(model.plans[other].name));
    return list;
}

}  // namespace

Outcome shopping_job(const Call& call) {
    const auto printing = asked_printing(call);
    const bool rows = call.value("--as") == "csv";
    const As as = printing || rows ? As::text : call.as();
    const plan::ShoppingList list = asked_list(call);
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
