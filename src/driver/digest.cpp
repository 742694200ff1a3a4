// SPDX-License-Identifier: MIT
#include <sha256.h>
#include <sys/types.h>

#include <algorithm>
#include <array>

#include "scruple/driver/driver.hpp"
#include "scruple/syntax/extent.hpp"

namespace scruple::driver {
namespace {

std::size_t end_of(const syntax::Tree& tree, const text::Source& source, std::uint32_t heading) {
    const std::size_t next = syntax::end_of_recipe(tree, heading);
    return next == tree.statements.size() ? source.bytes.size() : tree.statements[next].span.begin;
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
    const syntax::Tree& tree = *loaded.trees[place.file];
    const std::size_t begin = tree.statements[place.statement].span.begin;
    const std::string text =
        plain(std::string_view(source.bytes).substr(begin, end_of(tree, source, place.statement) - begin));
    std::array<char, SHA256_DIGEST_STRING_LENGTH> hex{};
    SHA256Data(reinterpret_cast<const std::uint8_t*>(text.data()), text.size(), hex.data());
    return hex.data();
}

}  // namespace scruple::driver
