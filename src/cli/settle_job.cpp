// SPDX-License-Identifier: MIT
#include "jobs.hpp"
#include "names.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome settle_job(const Call& call) {
    const bool recipe = call.value("--as") == "recipe";
    const As as = recipe ? As::text : call.as();
    const driver::Loaded& loaded = open_workspace(call);
    const check::Model& model = loaded.checked.model;
    const auto settled = printed::settle(model, model.printed[find_printed(loaded, call.name())]);
    if (recipe) return {Exit::fine, emit::settled_recipe(settled), {}};
    switch (as) {
        case As::text:
            return {Exit::fine, emit::settle_text(settled, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::settle_html(settled), {}};
        case As::json:
            return {Exit::fine, emit::settle_json(settled), {}};
    }
    return {};
}

}  // namespace scruple::cli
