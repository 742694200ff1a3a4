// SPDX-License-Identifier: MIT
#include "scruple/text/utf8.hpp"

#include <utf8proc.h>

#include <cstring>

#include "scruple/text/source.hpp"

namespace scruple::text {
namespace {

bool eight_ascii_without_nul(const char* bytes) {
    constexpr std::uint64_t ones = 0x0101010101010101;
    constexpr std::uint64_t high_bits = 0x8080808080808080;
    std::uint64_t word = 0;
    std::memcpy(&word, bytes, sizeof word);
    return ((word | (word - ones)) & high_bits) == 0;
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
        if (bytes.size() - at >= 8 && eight_ascii_without_nul(bytes.data() + at)) {
            at += 8;
            continue;
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
