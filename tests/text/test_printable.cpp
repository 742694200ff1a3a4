// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include "scruple/text/printable.hpp"
#include "scruple/text/source.hpp"
#include "scruple/text/utf8.hpp"

using scruple::text::printable;
using scruple::text::shortened;

TEST_CASE("plain words and the trade's signs stay as they are") {
    for (const char* words : {"", "sodium sulfite (anhydrous)", "Na2CO3·10H2O", "½ µl at 20 °C", "薬品", "“quoted”"}) {
        CHECK(printable(words) == words);
    }
}

TEST_CASE("terminal escapes and control characters become pictures") {
    CHECK(printable("\x1B[31mred\x1B[0m") == "␛[31mred␛[0m");
    CHECK(printable("a\nb\rc") == "a␊b␍c");
    CHECK(printable(std::string_view("\0", 1)) == "␀");
    CHECK(printable("\x1F\x7F") == "␟␡");
    CHECK(printable("a\tb") == "a b");
    CHECK(printable("\xC2\x9B"
                    "31m") == "‹U+009B›31m");
}

// Unicode Standard Annex 9: the explicit directional formatting characters.
TEST_CASE("every direction control is shown by its number") {
    CHECK(printable("\u202Ametol\u202C") == "‹U+202A›metol‹U+202C›");
    for (const char* control : {"\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C", "\u202D", "\u202E",
                                "\u2066", "\u2067", "\u2068", "\u2069"}) {
        CHECK(printable(control).starts_with("‹U+"));
    }
}

TEST_CASE("unseen characters are shown, the joiners that scripts need are not touched") {
    CHECK(printable("me\u200Btol") == "me‹U+200B›tol");
    CHECK(printable("\uFEFFmetol") == "‹U+FEFF›metol");
    CHECK(printable("a\u2028b") == "a‹U+2028›b");
    CHECK(printable("\U000E0041") == "‹U+E0041›");
    CHECK(printable("a\u200Db") == "a\u200Db");
    CHECK(printable("\u2620\uFE0F") == "\u2620\uFE0F");
    CHECK(printable("me\u3164tol") == "me‹U+3164›tol");
}

TEST_CASE("bytes that are not UTF-8 are shown as bytes") {
    CHECK(printable("a\xFFz") == "a‹byte FF›z");
    CHECK(printable("\xE2\x82") == "‹byte E2›‹byte 82›");
}

TEST_CASE("what comes out is valid and without control characters, whatever went in") {
    for (int first = 0; first < 256; ++first) {
        for (int second = 0; second < 256; ++second) {
            const std::string bytes{static_cast<char>(first), static_cast<char>(second)};
            const std::string shown = printable(bytes);
            const bool clean = scruple::text::first_invalid_byte(shown) == std::string::npos &&
                               shown.find_first_of("\x1B\n\r\t\b\a") == std::string::npos && printable(shown) == shown;
            if (!clean) FAIL_CHECK(first << ' ' << second);
        }
    }
}

TEST_CASE("long text is cut to whole code points with a mark at the end") {
    CHECK(shortened("metol", 5) == "metol");
    CHECK(shortened("metols", 5) == "meto…");
    CHECK(shortened("µµµµ", 3) == "µµ…");
    CHECK(shortened("ab", 1) == "…");
    CHECK(shortened("", 1) == "");
    CHECK(shortened("\xFF\xFF\xFF", 2) == "\xFF…");
}

TEST_CASE("lines keep their ends") {
    using scruple::text::printable_lines;
    CHECK(printable_lines("a\x1B\nb\n") == "a␛\nb\n");
    CHECK(printable_lines("a\n\nb") == "a\n\nb");
    CHECK(printable_lines("").empty());
}

TEST_CASE("the first character that does not show is found, wherever it stands") {
    using scruple::text::first_unseen;
    for (const std::size_t before : {0, 1, 63, 64, 65, 127, 128, 1000}) {
        CAPTURE(before);
        const std::string plain = std::string(before, 'x') + "é\t\r\n";
        CHECK(first_unseen(plain) == std::string::npos);
        for (const char* hidden : {"\x1B", "\x7F", "\u202E", "\u0085", "\u200B", "\uFEFF"})
            CHECK(first_unseen(plain + hidden + plain) == plain.size());
    }
    CHECK(first_unseen("\uFEFFrecipe") == std::string::npos);
    CHECK(first_unseen("a\u200Bb\u200Bc", 4) == 5);
}

TEST_CASE("a JSON text means the same with what does not show as escapes") {
    using scruple::text::with_unseen_escaped;
    CHECK(with_unseen_escaped("[\"a\u202Eb\"]\n") == "[\"a\\u202eb\"]\n");
    // RFC 8259, 7: U+E0041 is the pair DB40 DC41.
    CHECK(with_unseen_escaped("\"\U000E0041\x7F\"") == "\"\\udb40\\udc41\\u007f\"");
    CHECK(with_unseen_escaped("{\"é\": 1}") == "{\"é\": 1}");
}
