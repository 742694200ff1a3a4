// SPDX-License-Identifier: MIT
// The value of a number as it is written.
#pragma once

#include <string_view>

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// `0.7`, `1 1/2`, `½`, `−3`: exact; loose where it does not fit the words of a Number.
/// `text` must be what the grammar calls a number.
[[nodiscard]] Number read_number(std::string_view text, Span span);

/// The same, at once for the few digits of nearly every number.
[[nodiscard]] inline Number quick_number(std::string_view text, Span span) {
    if (text.size() > 9) return read_number(text, span);
    std::uint32_t value = 0;
    std::uint32_t denominator = 0;  // 0 as long as no point was read
    for (const char byte : text) {
        if (byte == '.') {
            denominator = 1;
            continue;
        }
        if (byte < '0' || byte > '9') return read_number(text, span);
        value = value * 10 + static_cast<std::uint32_t>(byte - '0');
        denominator *= 10;
    }
    return {value, denominator == 0 ? 1 : denominator, span};
}

}  // namespace scruple::syntax
