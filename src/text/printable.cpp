// SPDX-License-Identifier: MIT
#include "scruple/text/printable.hpp"

#include <fmt/format.h>
#include <utf8proc.h>

#include <algorithm>

#include "scruple/text/utf8.hpp"

namespace scruple::text {
namespace {

bool plain(char byte) {
    return byte >= ' ' && byte <= '~';
}

bool is_joiner(char32_t c) {
    return c == U'\u200C' || c == U'\u200D';
}

bool acts_or_hides(char32_t c) {
    switch (utf8proc_category(static_cast<utf8proc_int32_t>(c))) {
        case UTF8PROC_CATEGORY_CC:
        case UTF8PROC_CATEGORY_ZL:
        case UTF8PROC_CATEGORY_ZP:
            return true;
        case UTF8PROC_CATEGORY_CF:
            return !is_joiner(c);
        default:
            return false;
    }
}

// U+2400 and on are pictures of the control characters, in their order.
std::string picture(unsigned char control) {
    const unsigned last = control == 0x7F ? 0xA1u : 0x80u + control;
    return {'\xE2', '\x90', static_cast<char>(last)};
}

std::string printable_one(CodePoint here, std::string_view bytes) {
    if (!here.valid) return fmt::format("‹byte {:02X}›", static_cast<unsigned>(here.value));
    if (here.value == U'\t') return " ";
    if (here.value < 0x20 || here.value == 0x7F) return picture(static_cast<unsigned char>(here.value));
    if (acts_or_hides(here.value)) return fmt::format("‹U+{:04X}›", static_cast<unsigned>(here.value));
    return std::string(bytes.substr(0, here.length));
}

}  // namespace

std::string printable(std::string_view bytes) {
    if (std::all_of(bytes.begin(), bytes.end(), plain)) return std::string(bytes);
    std::string result;
    while (!bytes.empty()) {
        const CodePoint here = first_code_point(bytes);
        result += printable_one(here, bytes);
        bytes.remove_prefix(here.length);
    }
    return result;
}

std::string shortened(std::string_view bytes, std::size_t most) {
    std::size_t at = 0;
    std::size_t room_for_mark = 0;
    for (std::size_t count = 0; at < bytes.size(); ++count) {
        if (count + 1 == most) room_for_mark = at;
        if (count == most) return std::string(bytes.substr(0, room_for_mark)) + "…";
        at += first_code_point(bytes.substr(at)).length;
    }
    return std::string(bytes);
}

}  // namespace scruple::text
