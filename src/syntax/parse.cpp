// SPDX-License-Identifier: MIT
#include "scruple/syntax/parse.hpp"

#include "actions_file.hpp"
#include "parse_line.hpp"
#include "scruple/text/lines.hpp"

namespace scruple::syntax {
namespace {

/// Room for a statement a line, and for the amounts that so many lines usually have: memory that is touched for the
/// first time costs as much as reading what goes into it.
void reserve(Tree& tree, std::string_view bytes) {
    const auto lines = text::count_of('\n', bytes) + 1;
    tree.statements.reserve(lines);
    tree.ranges.reserve(lines * 5 / 8 + 2);
}

template <class Rule>
void read(std::string_view text, Draft& draft) {
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(text.data(), text.data() + text.size(), std::string());
    (void)tao::pegtl::parse<Rule, action>(in, draft);
}

}  // namespace

static_assert(longest_line == grammar::scan::longest_line);

Tree parse(const text::Source& source) {
    Tree tree;
    reserve(tree, source.bytes);
    parse(source, tree);
    return tree;
}

void parse(const text::Source& source, Tree& tree) {
    tree.clear();
    Draft draft(tree, source.bytes.data());
    read<grammar::file>(source.bytes, draft);
}

void parse_line(std::string_view line, Draft& draft) {
    read<grammar::line>(line, draft);
}

}  // namespace scruple::syntax
