// SPDX-License-Identifier: MIT
#include "batch.hpp"
#include "jobs.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

plan::ContentsSheet sheet(const check::Model& model, const plan::CardRequest& request) {
    auto made = plan::contents_sheet(model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) throw Stop{Exit::wrong_call, refusal->message};
    return std::move(std::get<plan::ContentsSheet>(made));
}

}  // namespace

Outcome contents_job(const Call& call) {
    const As as = call.as();
    const driver::Loaded& loaded = open_for_the_bench(call, asked_amounts(call));
    const check::Model& model = loaded.checked.model;
    const Meant meant = find_solution(loaded, call.name());
    plan::CardRequest request{check::none, asked_variant(call, model.recipes[meant.recipe]), {}, check::none, {}};
    request.at_celsius = at_celsius(call, loaded);
    add_substitutions(call, loaded, whole(loaded, meant), request);
    std::vector<plan::ContentsSheet> sheets;
    for (const check::Id section : meant.sections) {
        request.section = section;
        sheets.push_back(sheet(model, request));
    }
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
