// SPDX-License-Identifier: MIT
// Whatever pages a text has as they stand in a book, settled; the recipe that comes of one is tidy.
#include <cstdint>

#include "demand.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

void print(const printed::Settlement& settled) {
    fuzz::demand_text("a settlement is text", emit::settle_text(settled, {80}));
    fuzz::demand_page("a settlement is a page", emit::settle_html(settled));
    fuzz::demand_json("a settlement is JSON", emit::settle_json(settled));
    const text::Source recipe{"recipe.scruple", emit::settled_recipe(settled)};
    fuzz::demand_text("the recipe is text", recipe.bytes);
    fuzz::demand(emit::tidy_text(recipe, syntax::parse(recipe)) == recipe.bytes, "the recipe is tidy", recipe.bytes);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    if (!workspace.take({data, data + size})) return 0;
    const check::Model& model = workspace.model();
    for (const check::PrintedPage& page : model.printed) print(printed::settle(model, page));
    return 0;
}
