// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "batch.hpp"
#include "jobs.hpp"
#include "present.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
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

/// Amounts whose numbers recipe text cannot hold, `?` among them.
std::ptrdiff_t loose_numbers(const std::string& recipe) {
    const syntax::Tree tree = syntax::parse({"scaled", recipe});
    const auto is_loose = [](const syntax::Quantity& quantity) { return quantity.number.loose(); };
    return std::ranges::count_if(tree.quantities, is_loose) +
           std::ranges::count_if(tree.ranges, is_loose, &syntax::Range::low) +
           std::ranges::count_if(tree.ranges, is_loose, &syntax::Range::high);
}

}  // namespace

Outcome scaled_job(const Call& call) {
    const As as = call.as();
    const Asked asked = asked_amounts(call);
    if (asked.sources().empty() && !call.has("--instead") && !call.has("--from-shelf")) {
        throw Stop{Exit::wrong_call,
                   "scaled to what? Say it with `--make 500ml`, `--films 6 135` or `--with \"metol 43 g\"`"};
    }
    const Loaded& loaded = open_for_the_bench(call, asked);
    const Meant meant = find_solution(loaded, call.name());

    const check::Recipe& recipe = loaded.checked.model.recipes[meant.recipe];
    plan::CardRequest request{meant.sections.front(), variant(call, recipe), how_much(call, loaded), check::none, {}};
    // The text has every solution of the recipe, whichever one was named for its volume.
    add_substitutions(call, loaded, whole(loaded, meant), request);
    const text::FileId file = recipe.place.file;
    const auto scaled_by = [&](const quantity::Exact& by, const std::vector<plan::Rewriting>& lines) {
        return emit::scaled_text(loaded.sources[file], *loaded.trees[file], recipe.place.statement, by, lines);
    };
    const std::string text = scaled_by(common_factor(loaded, meant, request), rewritings(loaded, request));
    if (loose_numbers(text) > loose_numbers(scaled_by(1, {})))
        throw Stop{Exit::wrong_call,
                   fmt::format("the amounts of {} would have more figures than a number in a recipe can have; "
                               "write them with fewer, or scale it to a rounder volume",
                               recipe.name)};
    return {Exit::fine, presented(as, "scaled", recipe.name, text), {}};
}

}  // namespace scruple::cli
