// SPDX-License-Identifier: MIT
#include "batch.hpp"
#include "jobs.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome contents_job(const Call& call) {
    const As as = call.as();
    const driver::Loaded loaded = open_for_the_bench(call);
    const check::Model& model = loaded.checked.model;
    const Meant meant = find_solution(loaded, call.name());
    const std::size_t variant = asked_variant(call, model.recipes[meant.recipe]);
    std::vector<plan::ContentsSheet> sheets;
    for (const check::Id section : meant.sections) sheets.push_back(plan::contents_sheet(model, section, variant));
    switch (as) {
        case As::text:
            return {Exit::fine, emit::contents_text(sheets, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::contents_html(sheets), {}};
        case As::json:
            return {Exit::fine, emit::contents_json(sheets), {}};
    }
    return {};
}

}  // namespace scruple::cli
