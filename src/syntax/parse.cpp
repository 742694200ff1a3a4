// SPDX-License-Identifier: MIT
#include "scruple/syntax/parse.hpp"

#include "actions_file.hpp"

namespace scruple::syntax {
namespace {

/// Room for the statements and amounts of a text with lines of the usual length.
void reserve(Tree& tree, std::size_t bytes) {
    tree.statements.reserve(bytes / 24 + 4);
    tree.ranges.reserve(bytes / 32 + 4);
}

}  // namespace

static_assert(longest_line == grammar::scan::longest_line);

Tree parse(const text::Source& source) {
    Tree tree;
    reserve(tree, source.bytes.size());
    Draft draft(tree, source.bytes.data());
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(source.bytes, std::string());
    (void)tao::pegtl::parse<grammar::file, action>(in, draft);
    return tree;
}

}  // namespace scruple::syntax
