// SPDX-License-Identifier: MIT
#include "scruple/syntax/extent.hpp"

namespace scruple::syntax {
namespace {

bool belongs_to_recipe(Block block) {
    return block == Block::part || block == Block::bath || block == Block::working || block == Block::replenisher;
}

}  // namespace

std::size_t end_of_recipe(const Tree& tree, std::size_t heading) {
    for (std::size_t i = heading + 1; i < tree.statements.size(); ++i) {
        const auto* next = std::get_if<Heading>(&tree.statements[i].node);
        if (next != nullptr && !belongs_to_recipe(next->block)) return i;
    }
    return tree.statements.size();
}

}  // namespace scruple::syntax
