// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include "scruple/text/lines.hpp"
#include "scruple/text/source.hpp"

using scruple::text::Lines;
using scruple::text::Position;
using scruple::text::Source;
using scruple::text::Span;

namespace {

void check_place(const Source& source, std::uint32_t offset, std::size_t line, std::size_t column) {
    CAPTURE(source.bytes);
    CAPTURE(offset);
    const Position place = position_of(source, offset);
    CHECK(place.line == line);
    CHECK(place.column == column);
}

// The slow way: a place is one line further for each line end before it.
Position counted(const std::string& bytes, std::uint32_t offset) {
    Position place;
    for (std::uint32_t at = 0; at < offset; ++at) {
        const bool inside_crlf = bytes[at] == '\r' && at + 1 < bytes.size() && bytes[at + 1] == '\n';
        if (bytes[at] == '\n' || (bytes[at] == '\r' && !inside_crlf)) {
            place = {place.line + 1, 1};
        } else if ((bytes[at] & 0xC0) != 0x80) {
            ++place.column;
        }
    }
    return place;
}

}  // namespace

TEST_CASE("lines and columns count from one") {
    const Source source{"a.scruple", "one\ntwo\n"};
    check_place(source, 0, 1, 1);
    check_place(source, 2, 1, 3);
    check_place(source, 3, 1, 4);
    check_place(source, 4, 2, 1);
    check_place(source, 8, 3, 1);
}

TEST_CASE("an empty file has one place") {
    const Source source{"empty.scruple", ""};
    check_place(source, 0, 1, 1);
    CHECK(line_around(source, 0) == Span{0, 0});
}

TEST_CASE("LF, CRLF and CR each end one line") {
    const Source source{"ends.scruple", "a\r\nb\rc\nd"};
    check_place(source, 0, 1, 1);
    check_place(source, 3, 2, 1);
    check_place(source, 5, 3, 1);
    check_place(source, 7, 4, 1);
    CHECK(source.at(line_around(source, 0)) == "a");
    CHECK(source.at(line_around(source, 3)) == "b");
    CHECK(source.at(line_around(source, 5)) == "c");
    CHECK(source.at(line_around(source, 7)) == "d");
}

TEST_CASE("a line end belongs to the line that it ends") {
    const Source source{"ends.scruple", "ab\r\ncd\n"};
    CHECK(source.at(line_around(source, 2)) == "ab");
    CHECK(source.at(line_around(source, 3)) == "ab");
    CHECK(source.at(line_around(source, 6)) == "cd");
    CHECK(line_around(source, 7) == Span{7, 7});
}

TEST_CASE("columns count code points, not bytes") {
    const Source source{"wide.scruple", "5 µl 薬 x"};
    check_place(source, 2, 1, 3);
    check_place(source, 4, 1, 4);
    check_place(source, 6, 1, 6);
    check_place(source, 10, 1, 8);
}

TEST_CASE("a byte order mark takes no column") {
    const Source source{"marked.scruple", "\xEF\xBB\xBFrecipe X"};
    check_place(source, 0, 1, 1);
    check_place(source, 3, 1, 1);
    check_place(source, 4, 1, 2);
    CHECK(source.at(line_around(source, 0)) == "recipe X");
}

TEST_CASE("an offset past the end is taken as the end") {
    const Source source{"short.scruple", "ab"};
    check_place(source, 99, 1, 3);
    CHECK(line_around(source, 99) == Span{0, 2});
}

TEST_CASE("places asked for in any order agree with counting from the start") {
    const std::string bytes = "aµb\r\n\r\n薬c\rd\n\ne";
    Lines lines(bytes);
    for (std::uint32_t step : {1u, 3u, 5u, 7u}) {
        for (std::uint32_t round = 0; round <= bytes.size(); ++round) {
            const auto offset = static_cast<std::uint32_t>(round * step % (bytes.size() + 1));
            CAPTURE(offset);
            const Position place = lines.position(offset);
            CHECK(place.line == counted(bytes, offset).line);
            CHECK(place.column == counted(bytes, offset).column);
        }
    }
}

TEST_CASE("many places in one very long line are found in one pass over it") {
    const std::string bytes(8u << 20, 'x');
    Lines lines(bytes);
    for (std::uint32_t offset = 0; offset < bytes.size(); offset += 64) {
        REQUIRE(lines.position(offset).column == offset + 1);
    }
}
