// SPDX-License-Identifier: MIT
#include "scruple/syntax/normal.hpp"

#include <utf8proc.h>

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

/// Everything but spelling: one character after the other.
void fold(std::string_view written, std::string& name) {
    const auto* at = reinterpret_cast<const utf8proc_uint8_t*>(written.data());
    auto left = static_cast<utf8proc_ssize_t>(written.size());
    bool blank = false;
    while (left > 0) {
        utf8proc_int32_t point = *at;
        const auto length = point < 0x80 ? 1 : utf8proc_iterate(at, left, &point);
        if (length <= 0) return;
        at += length;
        left -= length;
        if (is_blank(point)) {
            blank = !name.empty();
            continue;
        }
        if (blank) name += ' ';
        blank = false;
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
    scratch.clear();
    fold(written, scratch);
    respell(scratch, "sulph", "sulf");
    respell(scratch, "aluminium", "aluminum");
}

std::string normal_name(std::string_view written) {
    std::string name;
    normal_name(written, name);
    return name;
}

}  // namespace scruple::syntax
