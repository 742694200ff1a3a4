// SPDX-License-Identifier: MIT
// A unit's spelling in two machine words, so that spellings are compared and hashed in a few steps.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace scruple::quantity {

/// Up to 15 bytes, which every unit's spelling keeps to; the last byte is the length, so that no two texts are alike.
struct PackedSpelling {
    static constexpr std::size_t longest = 15;

    std::uint64_t low = 0, high = 0;
    friend bool operator==(const PackedSpelling&, const PackedSpelling&) = default;
};

constexpr std::uint64_t packed_word(std::string_view text, std::size_t from, std::size_t to) {
    std::uint64_t word = 0;
    for (std::size_t i = to; i > from; --i) word = word << 8 | static_cast<unsigned char>(text[i - 1]);
    return word;
}

/// nullopt for what is longer than any unit.
constexpr std::optional<PackedSpelling> packed(std::string_view text) {
    const std::size_t length = text.size();
    if (length > PackedSpelling::longest) return std::nullopt;
    const std::uint64_t high = std::uint64_t{length} << 56;
    if (length <= 8) return PackedSpelling{packed_word(text, 0, length), high};
    return PackedSpelling{packed_word(text, 0, 8), high | packed_word(text, 8, length)};
}

/// The bytes of the blank (blank, tab or U+00A0) at the start of `text`; 0 where none stands there.
constexpr std::size_t blank_at(std::string_view text) {
    if (text.empty()) return 0;
    if (text[0] == ' ' || text[0] == '\t') return 1;
    return text.substr(0, 2) == "\u00A0" ? 2 : 0;
}

/// One blank for each run of them, none after `%`; nullopt when the rest is longer than any unit.
constexpr std::optional<PackedSpelling> folded(std::string_view text) {
    std::array<char, PackedSpelling::longest> bytes{};
    std::size_t length = 0;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t blank = blank_at(text.substr(i));
        const char byte = blank != 0 ? ' ' : text[i];
        i += blank != 0 ? blank : 1;
        const char last = length == 0 ? '\0' : bytes[length - 1];
        if (byte == ' ' && (last == ' ' || last == '%')) continue;
        if (length == bytes.size()) return std::nullopt;
        bytes[length++] = byte;
    }
    return packed({bytes.data(), length});
}

}  // namespace scruple::quantity
