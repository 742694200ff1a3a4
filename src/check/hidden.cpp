// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "passes.hpp"
#include "scruple/text/printable.hpp"
#include "scruple/text/utf8.hpp"

namespace scruple::check {

void report_hidden_characters(Reader& reader) {
    if (reader.tree.statements.empty()) return;  // nothing of it is read, and why is said
    const std::string_view bytes = reader.source.bytes;
    for (std::size_t at = text::first_unseen(bytes); at != std::string_view::npos; at = text::first_unseen(bytes, at)) {
        const text::CodePoint here = text::first_code_point(bytes.substr(at));
        const auto begin = static_cast<std::uint32_t>(at);
        reader.report(diagnostics::Kind::hidden_character, {begin, begin + here.length},
                      {fmt::format("U+{:04X}", static_cast<unsigned>(here.value))});
        at = std::min(bytes.find_first_of("\r\n", at), bytes.size());
    }
}

}  // namespace scruple::check
