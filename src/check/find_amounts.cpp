// SPDX-License-Identifier: MIT
// Amounts written `?`: which of them are looked for together.
#include <algorithm>

#include "amount_search.hpp"
#include "ingredients_of.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

/// What a solution is made of, itself last, as far as amounts of it are open. Nothing, where a line of any of it could
/// not be read: what it holds is not known then.
std::vector<Id> open_below(const Model& model, Id section, const std::vector<Id>& open) {
    auto all = made_of(model, section, [](Id) { return false; });
    if (std::ranges::any_of(all, [&](Id id) { return model.sections[id].broken; })) return {};
    std::erase_if(all, [&](Id id) { return id != section && std::ranges::find(open, id) == open.end(); });
    return all;
}

void forget(std::vector<Id>& open, const std::vector<Id>& sections) {
    std::erase_if(open, [&](Id id) { return std::ranges::find(sections, id) != sections.end(); });
}

}  // namespace

void find_amounts(Reader& reader, Model& model, const std::vector<Id>& recipe, std::vector<Id> open) {
    const auto try_all = [&](const std::vector<Id>& sections, bool alone) {
        for (const Id id : sections) {
            auto together = open_below(model, id, open);
            if (alone && !together.empty()) together = {id};
            AmountSearch search(reader, model, together);
            if (!search.can_be_tried()) continue;
            search.run();
            forget(open, together);
        }
    };
    try_all(std::vector(open), true);
    if (!open.empty()) try_all(recipe, false);
    for (const Id id : open) AmountSearch(reader, model, {id}).leave_open();
}

}  // namespace scruple::check
