// SPDX-License-Identifier: MIT
// A unit's spelling folded into two machine words, so that spellings are compared and hashed in a few steps.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace scruple::quantity {

struct FoldedSpelling {
    static constexpr std::size_t longest = 16;  ///< bytes; every unit's spelling is shorter

    std::uint64_t low = 0, high = 0;
    friend bool operator==(const FoldedSpelling&, const FoldedSpelling&) = default;
};

/// The bytes of the blank (blank, tab or U+00A0) at the start of `text`; 0 where none stands there.
constexpr std::size_t blank_at(std::string_view text) {
    if (text.empty()) return 0;
    if (text[0] == ' ' || text[0] == '\t') return 1;
    return text.substr(0, 2) == "\u00A0" ? 2 : 0;
}

/// One blank for each run of them, none after `%`; nullopt for what is longer than any unit, or holds a NUL.
constexpr std::optional<FoldedSpelling> folded(std::string_view text) {
    FoldedSpelling result;
    std::size_t length = 0;
    char last = 0;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t blank = blank_at(text.substr(i));
        const char byte = blank != 0 ? ' ' : text[i];
        i += blank != 0 ? blank : 1;
        if (byte == ' ' && (last == ' ' || last == '%')) continue;
        if (length == FoldedSpelling::longest || byte == 0) return std::nullopt;
        auto& word = length < 8 ? result.low : result.high;
        word |= static_cast<std::uint64_t>(static_cast<unsigned char>(byte)) << (8 * (length % 8));
        ++length;
        last = byte;
    }
    return result;
}

}  // namespace scruple::quantity
