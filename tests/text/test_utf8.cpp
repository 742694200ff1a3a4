// SPDX-License-Identifier: MIT
// The rows of bytes are those of The Unicode Standard 15.0, chapter 3, tables 3-7 to 3-11 (from memory).
#include <doctest/doctest.h>

#include <string>

#include "scruple/text/source.hpp"
#include "scruple/text/utf8.hpp"

using scruple::text::display_width;
using scruple::text::first_code_point;
using scruple::text::first_invalid_byte;

namespace {

constexpr std::size_t none = std::string_view::npos;

std::string encoded(char32_t c) {
    const auto tail = [c](int shift) { return static_cast<char>(0x80 | ((c >> shift) & 0x3F)); };
    if (c < 0x80) return {static_cast<char>(c)};
    if (c < 0x800) return {static_cast<char>(0xC0 | (c >> 6)), tail(0)};
    if (c < 0x10000) return {static_cast<char>(0xE0 | (c >> 12)), tail(6), tail(0)};
    return {static_cast<char>(0xF0 | (c >> 18)), tail(12), tail(6), tail(0)};
}

}  // namespace

TEST_CASE("every scalar value is valid and comes back as itself") {
    for (char32_t c = 1; c <= 0x10FFFF; ++c) {
        if (c >= 0xD800 && c <= 0xDFFF) continue;
        const std::string bytes = encoded(c);
        const auto here = first_code_point(bytes);
        if (!here.valid || here.value != c || here.length != bytes.size() || first_invalid_byte(bytes) != none) {
            FAIL_CHECK("code point " << static_cast<unsigned>(c));
        }
    }
}

TEST_CASE("surrogates and values past the last plane are refused") {
    for (char32_t c = 0xD800; c <= 0xDFFF; ++c) {
        if (first_invalid_byte(encoded(c)) != 0) FAIL_CHECK("code point " << static_cast<unsigned>(c));
    }
    CHECK(first_invalid_byte("\xF4\x90\x80\x80") == 0);
    CHECK(first_invalid_byte("\xF8\x88\x80\x80\x80") == 0);
}

TEST_CASE("overlong forms, stray and missing tails are refused") {
    CHECK(first_invalid_byte("\xC0\xAF") == 0);
    CHECK(first_invalid_byte("\xC1\xBF") == 0);
    CHECK(first_invalid_byte("\xE0\x80\x81") == 0);
    CHECK(first_invalid_byte("\xE0\x9F\xBF") == 0);
    CHECK(first_invalid_byte("\xF0\x80\x80\x81") == 0);
    CHECK(first_invalid_byte("\xF0\x8F\xBF\xBF") == 0);
    CHECK(first_invalid_byte("a\x80") == 1);
    CHECK(first_invalid_byte("ab\xE2\x82") == 2);
    CHECK(first_invalid_byte("ab\xE2z") == 2);
    CHECK(first_invalid_byte("\xFF\xFE") == 0);
}

TEST_CASE("NUL is refused wherever it stands") {
    for (std::size_t length = 1; length <= 24; ++length) {
        for (std::size_t at = 0; at < length; ++at) {
            std::string bytes(length, 'x');
            bytes[at] = '\0';
            CHECK(first_invalid_byte(bytes) == at);
        }
    }
}

TEST_CASE("a bad byte is found wherever it stands among plain ones") {
    for (const char bad : {'\x80', '\xC3', '\xFF'}) {
        for (std::size_t at = 0; at < 24; ++at) {
            std::string bytes(24, '\x01');
            bytes[at] = bad;
            CHECK(first_invalid_byte(bytes) == at);
        }
    }
}

TEST_CASE("an invalid byte comes alone") {
    const auto here = first_code_point("\xE2\x82");
    CHECK_FALSE(here.valid);
    CHECK(here.length == 1);
    CHECK(here.value == 0xE2);
}

// Unicode Standard Annex 11, East Asian Width: W and F take two columns, combining marks none.
TEST_CASE("width on a terminal") {
    CHECK(display_width("") == 0);
    CHECK(display_width("sulfite") == 7);
    CHECK(display_width("µl ½ °C ·") == 9);
    CHECK(display_width("薬品") == 4);
    CHECK(display_width("ｱ") == 1);
    CHECK(display_width("Ａ") == 2);
    CHECK(display_width("e\xCC\x81") == 1);
    CHECK(display_width("🧪") == 2);
    CHECK(display_width("‾") == 1);
}
