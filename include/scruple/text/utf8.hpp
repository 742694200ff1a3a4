// SPDX-License-Identifier: MIT
// One code point at a time, from bytes that may be anything.
#pragma once

#include <cstdint>
#include <string_view>

namespace scruple::text {

struct CodePoint {
    char32_t value = 0;       ///< the byte itself where it begins nothing valid
    std::uint8_t length = 1;  ///< in bytes
    bool valid = false;
};

/// The first code point of `bytes`, which must not be empty. Strict: overlong forms, surrogates
/// and values past U+10FFFF are not valid, and come one byte at a time.
[[nodiscard]] CodePoint first_code_point(std::string_view bytes);

}  // namespace scruple::text
