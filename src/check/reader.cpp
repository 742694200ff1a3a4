// SPDX-License-Identifier: MIT
#include "reader.hpp"

#include "scruple/syntax/normal.hpp"

namespace scruple::check {

const std::string& Reader::normal(std::string_view written) {
    const auto folded = syntax::normal_name(written, scratch);
    if (folded.data() != scratch.data() || folded.size() != scratch.size()) scratch.assign(folded);
    return scratch;
}

diagnostics::Diagnostic& Reader::report(diagnostics::Kind kind, text::Span span,
                                        std::initializer_list<std::string_view> arguments) {
    return out.emplace_back(diagnostics::make(kind, file, span, arguments));
}

}  // namespace scruple::check
