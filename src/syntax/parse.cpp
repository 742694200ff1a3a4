// SPDX-License-Identifier: MIT
#include "scruple/syntax/parse.hpp"

#include <algorithm>

#include "actions_file.hpp"

namespace scruple::syntax {
namespace {

/// Room for the statements and amounts of a text; a line is rarely shorter than its share.
void reserve(Tree& tree, std::string_view text) {
    const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1;
    tree.statements.reserve(lines);
    tree.ranges.reserve(lines);
}

}  // namespace

Tree parse(const text::Source& source) {
    Tree tree;
    reserve(tree, source.bytes);
    Draft draft(tree, source.bytes.data());
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(source.bytes, std::string());
    (void)tao::pegtl::parse<grammar::file, action>(in, draft);
    return tree;
}

}  // namespace scruple::syntax
