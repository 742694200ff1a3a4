// SPDX-License-Identifier: MIT
#include "scruple/syntax/normal.hpp"

#include <utf8proc.h>

#include <array>
#include <cstdint>

namespace scruple::syntax {
namespace {

constexpr utf8proc_int32_t no_break_blank = 0xA0;

bool is_blank(utf8proc_int32_t point) {
    return point == ' ' || point == '\t' || point == no_break_blank;
}

bool is_hyphen(utf8proc_int32_t point) {
    return (point >= 0x2010 && point <= 0x2015) || point == 0x2212;
}

void append(std::string& name, utf8proc_int32_t point) {
    utf8proc_uint8_t bytes[4];
    const auto length = utf8proc_encode_char(point, bytes);
    name.append(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(length));
}

/// What is known of a byte before anything is folded: `blank` is the plain one, and `other` is what folding may change.
/// The letters are those that tell the spellings apart.
enum Trait : std::uint8_t { blank = 1, other = 2, p = 4, h = 8, l = 16, a = 32, n = 64 };

constexpr auto traits = [] {
    std::array<std::uint8_t, 256> bytes{};
    bytes.fill(other);
    for (int byte = 1; byte < 0x80; ++byte)
        if (byte != '\t' && !(byte >= 'A' && byte <= 'Z')) bytes[static_cast<std::size_t>(byte)] = 0;
    bytes[' '] = blank;
    bytes['p'] = p;
    bytes['h'] = h;
    bytes['l'] = l;
    bytes['a'] = a;
    bytes['n'] = n;
    return bytes;
}();

/// What one look at a name tells, so that nearly all names need no other: there is nothing to fold, and neither
/// spelling has another.
struct Look {
    bool folded, may_have_sulph, may_have_aluminium;
};

Look look_at(std::string_view written) {
    unsigned seen = 0;
    unsigned twice = 0;
    unsigned before = blank;  // as one at the beginning is too much
    for (const char c : written) {
        const unsigned its = traits[static_cast<unsigned char>(c)];
        seen |= its;
        twice |= its & before;
        before = its;
    }
    const bool blanks_fit = (twice & blank) == 0 && (before != blank || written.empty());
    return {(seen & other) == 0 && blanks_fit, (~seen & (p | h | l)) == 0, (~seen & (a | l | n)) == 0};
}

/// Everything but spelling: one character after the other.
void fold(std::string_view written, std::string& name) {
    const auto* at = reinterpret_cast<const utf8proc_uint8_t*>(written.data());
    auto left = static_cast<utf8proc_ssize_t>(written.size());
    bool after_blank = false;
    while (left > 0) {
        utf8proc_int32_t point = *at;
        const auto length = point < 0x80 ? 1 : utf8proc_iterate(at, left, &point);
        if (length <= 0) return;
        at += length;
        left -= length;
        if (is_blank(point)) {
            after_blank = !name.empty();
            continue;
        }
        if (after_blank) name += ' ';
        after_blank = false;
        if (point < 0x80) {
            name += static_cast<char>(point >= 'A' && point <= 'Z' ? point + ('a' - 'A') : point);
        } else {
            append(name, is_hyphen(point) ? '-' : utf8proc_tolower(point));
        }
    }
}

void respell(std::string& name, std::string_view british, std::string_view american) {
    for (auto at = name.find(british); at != std::string::npos; at = name.find(british, at + american.size())) {
        name.replace(at, british.size(), american);
    }
}

}  // namespace

void normal_name(std::string_view written, std::string& scratch) {
    const Look look = look_at(written);
    if (look.folded) {
        scratch = written;
    } else {
        scratch.clear();
        fold(written, scratch);
    }
    if (!look.folded || look.may_have_sulph) respell(scratch, "sulph", "sulf");
    if (!look.folded || look.may_have_aluminium) respell(scratch, "aluminium", "aluminum");
}

std::string normal_name(std::string_view written) {
    std::string name;
    normal_name(written, name);
    return name;
}

}  // namespace scruple::syntax
