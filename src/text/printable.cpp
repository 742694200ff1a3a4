// SPDX-License-Identifier: MIT
#include "scruple/text/printable.hpp"

#include <fmt/format.h>
#include <utf8proc.h>

#include <algorithm>
#include <span>

#include "scruple/text/utf8.hpp"

namespace scruple::text {
namespace {

bool plain(char byte) {
    return byte >= ' ' && byte <= '~';
}

struct Range {
    char32_t first, last;
    [[nodiscard]] bool has(char32_t c) const { return c >= first && c <= last; }
};

// Joiners and variation selectors: without them some scripts and signs are written wrongly.
constexpr Range needed[] = {{0x200C, 0x200D}, {0xFE00, 0xFE0F}, {0xE0100, 0xE01EF}, {0x180B, 0x180D}, {0x180F, 0x180F}};
// Kept free by Unicode for more that is ignored where it is shown.
constexpr Range kept_free[] = {{0x2065, 0x2065}, {0xFFF0, 0xFFF8}, {0xE0000, 0xE0FFF}};

bool is_in(std::span<const Range> ranges, char32_t c) {
    return std::ranges::any_of(ranges, [c](const Range& range) { return range.has(c); });
}

// By the properties of Unicode: controls, separators of lines and paragraphs, formats, and what is ignored where it is
// shown (Default_Ignorable_Code_Point), such as fillers.
bool acts_or_hides(char32_t c) {
    const utf8proc_property_t* about = utf8proc_get_property(static_cast<utf8proc_int32_t>(c));
    switch (about->category) {
        case UTF8PROC_CATEGORY_CC:
        case UTF8PROC_CATEGORY_ZL:
        case UTF8PROC_CATEGORY_ZP:
            return true;
        default:
            return (about->category == UTF8PROC_CATEGORY_CF || about->ignorable || is_in(kept_free, c)) &&
                   !is_in(needed, c);
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

// How many bytes come before the first that may need a look. Piece by piece, so that a machine takes many at a time.
std::size_t bytes_that_show(std::string_view bytes) {
    constexpr std::size_t piece = 64;
    std::size_t at = 0;
    for (; at + piece <= bytes.size(); at += piece) {
        unsigned odd = 0;
        for (std::size_t i = 0; i < piece; ++i) odd += plain(bytes[at + i]) || bytes[at + i] == '\n' ? 0U : 1U;
        if (odd > 0) break;
    }
    while (at < bytes.size() && (plain(bytes[at]) || bytes[at] == '\n')) ++at;
    return at;
}

// As JSON has it (RFC 8259, 7): past the first plane as a pair of surrogates.
std::string escaped(char32_t c) {
    const auto value = static_cast<unsigned>(c);
    if (value < 0x10000) return fmt::format("\\u{:04x}", value);
    return fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + ((value - 0x10000) >> 10), 0xDC00 + ((value - 0x10000) & 0x3FF));
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

std::string printable_lines(std::string_view bytes) {
    std::string result;
    while (!bytes.empty()) {
        const std::string_view line = bytes.substr(0, bytes.find('\n'));
        const bool ended = line.size() < bytes.size();
        result += printable(line);
        if (ended) result += '\n';
        bytes.remove_prefix(line.size() + (ended ? 1 : 0));
    }
    return result;
}

std::size_t first_unseen(std::string_view utf8, std::size_t from) {
    constexpr std::string_view in_front = "\xEF\xBB\xBF";  // a byte order mark
    if (from == 0 && utf8.starts_with(in_front)) from = in_front.size();
    while (from < utf8.size()) {
        from += bytes_that_show(utf8.substr(from));
        if (from == utf8.size()) break;
        const CodePoint here = first_code_point(utf8.substr(from));
        const bool laid_out = here.value == U'\t' || here.value == U'\n' || here.value == U'\r';
        if (!laid_out && acts_or_hides(here.value)) return from;
        from += here.length;
    }
    return std::string_view::npos;
}

std::string with_unseen_escaped(std::string_view json) {
    std::string result;
    std::size_t at = 0;
    for (std::size_t next = first_unseen(json); next != std::string_view::npos; next = first_unseen(json, at)) {
        result += json.substr(at, next - at);
        const CodePoint here = first_code_point(json.substr(next));
        result += escaped(here.value);
        at = next + here.length;
    }
    return result.append(json.substr(at));
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
