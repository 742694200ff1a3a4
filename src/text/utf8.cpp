// SPDX-License-Identifier: MIT
#include "scruple/text/utf8.hpp"

#include <utf8proc.h>

#include <bit>
#include <cstring>

#include "scruple/text/source.hpp"

namespace scruple::text {
namespace {

constexpr std::size_t word_bytes = sizeof(std::uint64_t);

// How many of eight bytes come before the first that is NUL or not ASCII. Either gets its high bit set here;
// a borrow from a NUL reaches later bytes only.
std::size_t plain_bytes(const char* bytes) {
    constexpr std::uint64_t ones = 0x0101010101010101;
    constexpr std::uint64_t high_bits = 0x8080808080808080;
    static_assert(std::endian::native == std::endian::little);
    std::uint64_t word = 0;
    std::memcpy(&word, bytes, word_bytes);
    return static_cast<std::size_t>(std::countr_zero((word | (word - ones)) & high_bits)) / 8;
}

}  // namespace

CodePoint first_code_point(std::string_view bytes) {
    const auto first = static_cast<unsigned char>(bytes.front());
    if (first < 0x80) return {first, 1, true};
    utf8proc_int32_t value = 0;
    const auto* data = reinterpret_cast<const utf8proc_uint8_t*>(bytes.data());
    const utf8proc_ssize_t length = utf8proc_iterate(data, static_cast<utf8proc_ssize_t>(bytes.size()), &value);
    if (length <= 0) return {first, 1, false};
    return {static_cast<char32_t>(value), static_cast<std::uint8_t>(length), true};
}

std::size_t first_invalid_byte(std::string_view bytes) {
    std::size_t at = 0;
    while (at < bytes.size()) {
        if (bytes.size() - at >= word_bytes) {
            const std::size_t plain = plain_bytes(bytes.data() + at);
            at += plain;
            if (plain == word_bytes) continue;
        }
        const CodePoint here = first_code_point(bytes.substr(at));
        if (!here.valid || here.value == 0) return at;
        at += here.length;
    }
    return std::string_view::npos;
}

std::size_t display_width(std::string_view utf8) {
    std::size_t width = 0;
    while (!utf8.empty()) {
        const CodePoint here = first_code_point(utf8);
        width += static_cast<std::size_t>(utf8proc_charwidth(static_cast<utf8proc_int32_t>(here.value)));
        utf8.remove_prefix(here.length);
    }
    return width;
}

}  // namespace scruple::text
