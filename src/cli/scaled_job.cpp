// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "batch.hpp"
#include "jobs.hpp"
#include "present.hpp"
#include "scruple/emit/emit.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

quantity::Exact factor(const Loaded& loaded, const plan::CardRequest& request) {
    auto scale = plan::scale_of(loaded.checked.model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&scale)) throw Stop{Exit::wrong_call, refusal->message};
    return std::get<quantity::Exact>(scale);
}

// A recipe whose solutions would all be multiplied alike needs none of them named.
quantity::Exact common_factor(const Loaded& loaded, const Meant& meant, plan::CardRequest request) {
    request.section = meant.sections.front();
    quantity::Exact common = factor(loaded, request);
    for (const check::Id section : meant.sections) {
        request.section = section;
        if (factor(loaded, request) == common) continue;
        request.section = one_solution(loaded, meant).sections.front();
        return factor(loaded, request);
    }
    return common;
}

std::vector<plan::Rewriting> rewritings(const Loaded& loaded, const plan::CardRequest& request) {
    auto lines = plan::rewritten(loaded.checked.model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&lines)) throw Stop{Exit::wrong_call, refusal->message};
    return std::move(std::get<std::vector<plan::Rewriting>>(lines));
}

std::size_t variant(const Call& call, const check::Recipe& recipe) {
    const auto name = call.value("--variant");
    return name ? find_variant(recipe, *name) : 0;
}

}  // namespace

Outcome scaled_job(const Call& call) {
    const As as = call.as();
    const Asked asked = asked_amounts(call);
    if (asked.sources().empty() && !call.has("--instead") && !call.has("--from-shelf")) {
        throw Stop{Exit::wrong_call,
                   "scaled to what? Say it with `--make 500ml`, `--films 6 135` or `--with \"metol 43 g\"`"};
    }
    const Loaded loaded = open_for_the_bench(call, asked);
    const Meant meant = find_solution(loaded, call.name());

    const check::Recipe& recipe = loaded.checked.model.recipes[meant.recipe];
    plan::CardRequest request{meant.sections.front(), variant(call, recipe), how_much(call, loaded), check::none, {}};
    // The text has every solution of the recipe, whichever one was named for its volume.
    add_substitutions(call, loaded, whole(loaded, meant), request);
    const text::FileId file = recipe.place.file;
    const std::string text = emit::scaled_text(loaded.sources[file], loaded.trees[file], recipe.place.statement,
                                               common_factor(loaded, meant, request), rewritings(loaded, request));
    return {Exit::fine, presented(as, "scaled", recipe.name, text), {}};
}

}  // namespace scruple::cli
