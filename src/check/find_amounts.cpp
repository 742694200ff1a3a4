// SPDX-License-Identifier: MIT
// Amounts written `?`: which of them are looked for together.
#include <algorithm>

#include "amount_search.hpp"
#include "ingredients_of.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

/// A solution and all that it is made of, itself last.
std::vector<Id> all_of(const Model& model, Id section) {
    return made_of(model, section, [](Id) { return false; });
}

/// What a solution holds is not known where a line of anything it is made of could not be read.
bool is_broken(const Model& model, Id section) {
    return std::ranges::any_of(all_of(model, section), [&](Id id) { return model.sections[id].broken; });
}

/// What a solution is made of, itself last, as far as amounts of it are open.
std::vector<Id> open_below(const Model& model, Id section, const std::vector<Id>& open) {
    auto all = all_of(model, section);
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
            if (is_broken(model, id)) continue;
            const auto together = alone ? std::vector{id} : open_below(model, id, open);
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
