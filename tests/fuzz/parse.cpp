// SPDX-License-Identifier: MIT
// Any text gives a tree whose statements lie in order within it; tidied, it loses nothing but blanks, and tidied
// again it stays. Its outline, for which most lines are not read, is that of the tree.
#include "scruple/syntax/parse.hpp"

#include <algorithm>
#include <cstdint>

#include "demand.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/outline.hpp"

using namespace scruple;

namespace {

void demand_order(const text::Source& source, const syntax::Tree& tree) {
    std::uint32_t last = 0;
    for (const syntax::Statement& statement : tree.statements) {
        const text::Span span = statement.span;
        fuzz::demand(span.begin >= last && span.end >= span.begin && span.end <= source.bytes.size(),
                     "statements lie in order within the text");
        last = span.end;
    }
}

std::string tidied(const text::Source& source) {
    return emit::tidy_text(source, syntax::parse(source));
}

/// Nor the byte order mark.
std::string without_blanks(std::string text) {
    if (text.starts_with("\uFEFF")) text.erase(0, 3);
    for (std::size_t at = text.find("\u00A0"); at != std::string::npos; at = text.find("\u00A0", at)) text.erase(at, 2);
    std::erase_if(text, [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; });
    return text;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto file = driver::recipe_file_of({"fuzzed.scruple", {data, data + size}});
    if (file.fault) return 0;
    const syntax::Tree tree = syntax::parse(file.source);
    demand_order(file.source, tree);
    fuzz::demand(syntax::outline(file.source) == syntax::outline_of(tree), "the outline is that of the tree");
    const text::Source once{"tidied.scruple", tidied(file.source)};
    fuzz::demand(without_blanks(once.bytes) == without_blanks(file.source.bytes), "tidy takes away blanks alone",
                 once.bytes);
    fuzz::demand(tidied(once) == once.bytes, "tidy text is tidy", once.bytes);
    return 0;
}
