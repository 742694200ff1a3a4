// SPDX-License-Identifier: MIT
#include "reader.hpp"

#include "scruple/syntax/normal.hpp"

namespace scruple::check {

const std::string& Reader::normal(std::string_view written) {
    syntax::normal_name(written, scratch);
    return scratch;
}

diagnostics::Diagnostic& Reader::report(diagnostics::Kind kind, text::Span span,
                                        std::initializer_list<std::string_view> arguments) {
    return out.emplace_back(diagnostics::make(kind, file, span, arguments));
}

}  // namespace scruple::check
