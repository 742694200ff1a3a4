// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace scruple::peg {

/// The character at a byte of valid UTF-8; moves past it.
inline char32_t decode(std::string_view text, std::size_t& at) {
    const auto byte = [&](std::size_t place) { return static_cast<unsigned char>(text[place]); };
    const auto first = byte(at);
    const std::size_t length = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    char32_t value = length == 1 ? first : first & (0xFFu >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) value = value << 6 | (byte(at + i) & 0x3Fu);
    at += length;
    return value;
}

inline void encode(char32_t value, std::string& into) {
    const auto tail = [&](int shift) { into += static_cast<char>(0x80 | (value >> shift & 0x3F)); };
    if (value < 0x80) {
        into += static_cast<char>(value);
    } else if (value < 0x800) {
        into += static_cast<char>(0xC0 | value >> 6);
        tail(0);
    } else if (value < 0x10000) {
        into += static_cast<char>(0xE0 | value >> 12);
        tail(6), tail(0);
    } else {
        into += static_cast<char>(0xF0 | value >> 18);
        tail(12), tail(6), tail(0);
    }
}

}  // namespace scruple::peg
