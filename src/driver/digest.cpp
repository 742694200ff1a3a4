// SPDX-License-Identifier: MIT
#include <sha256.h>
#include <sys/types.h>

#include <array>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {
namespace {

bool is_in_a_recipe(syntax::Block block) {
    using enum syntax::Block;
    return block == part || block == bath || block == working || block == replenisher;
}

/// Where the block after the recipe begins, its own parts and baths passed over.
std::size_t end_of(const syntax::Tree& tree, const text::Source& source, std::uint32_t heading) {
    for (std::size_t i = heading + 1; i < tree.statements.size(); ++i) {
        const auto* other = std::get_if<syntax::Heading>(&tree.statements[i].node);
        if (other != nullptr && !is_in_a_recipe(other->block)) return tree.statements[i].span.begin;
    }
    return source.bytes.size();
}

std::string plain(std::string_view text) {
    std::string kept;
    while (!text.empty()) {
        std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const std::size_t last = line.find_last_not_of(" \t\r");
        kept += line.substr(0, last == std::string_view::npos ? 0 : last + 1);
        kept += '\n';
    }
    return kept;
}

}  // namespace

std::string digest_of(const Loaded& loaded, check::Id recipe) {
    const check::Place& place = loaded.checked.model.recipes[recipe].place;
    const text::Source& source = loaded.sources[place.file];
    const syntax::Tree& tree = loaded.trees[place.file];
    const std::size_t begin = tree.statements[place.statement].span.begin;
    const std::string text =
        plain(std::string_view(source.bytes).substr(begin, end_of(tree, source, place.statement) - begin));
    std::array<char, SHA256_DIGEST_STRING_LENGTH> hex{};
    SHA256Data(reinterpret_cast<const std::uint8_t*>(text.data()), text.size(), hex.data());
    return hex.data();
}

}  // namespace scruple::driver
