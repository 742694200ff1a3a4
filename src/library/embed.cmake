# SPDX-License-Identifier: MIT
# Turns the library's recipe text into one C++ source:
#   cmake -D OUT=library.cpp -D "FILES=a.scruple;b.scruple" -P embed.cmake
# Every byte becomes an escape, so that no text can end a literal or be too long for one line.
cmake_minimum_required(VERSION 3.25)

string(REPEAT "[0-9a-f]" 64 line_of_digits)
set(entries "")
foreach(file IN LISTS FILES)
    get_filename_component(name "${file}" NAME)
    file(READ "${file}" digits HEX)
    string(REGEX REPLACE "(${line_of_digits})" "\\1\n" digits "${digits}")
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" escapes "${digits}")
    string(REPLACE "\n" "\"\n        \"" escapes "${escapes}")
    string(APPEND entries "    {\"built-in/${name}\",\n        \"${escapes}\"s},\n")
endforeach()

file(WRITE "${OUT}.new" "// Made from src/library by embed.cmake.
#include \"scruple/driver/driver.hpp\"

namespace scruple::driver {

// NOLINTNEXTLINE(readability-function-size): as long as the library
const std::vector<text::Source>& library() {
    using namespace std::string_literals;
    static const std::vector<text::Source> all{
${entries}    };
    return all;
}

}  // namespace scruple::driver
")
file(RENAME "${OUT}.new" "${OUT}")
