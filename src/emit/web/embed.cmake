# SPDX-License-Identifier: MIT
# Turns the style and the scripts of the pages into one C++ source, each with the digest that a page's policy names:
#   cmake -D OUT=web.cpp -D "FOLDER=src/emit/web" -P embed.cmake
# Every byte becomes an escape, so that no text can end a literal.
cmake_minimum_required(VERSION 3.25)

set(digits "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/")

# The 32 bytes of a digest, in hex, as base64 (RFC 4648): eleven threes of bytes, the last of which lacks one.
function(to_base64 hex result)
    set(text "")
    foreach(group RANGE 10)
        math(EXPR at "${group} * 6")
        string(SUBSTRING "${hex}00" ${at} 6 three)
        foreach(shift 18 12 6 0)
            math(EXPR index "(0x${three} >> ${shift}) & 63")
            string(SUBSTRING "${digits}" ${index} 1 digit)
            string(APPEND text "${digit}")
        endforeach()
    endforeach()
    string(REGEX REPLACE ".$" "=" text "${text}")
    set(${result} "${text}" PARENT_SCOPE)
endfunction()

# NAME PART...: the parts one after the other.
function(embed name)
    set(text "\n")
    foreach(part IN LISTS ARGN)
        file(READ "${FOLDER}/${part}" more)
        string(APPEND text "${more}")
    endforeach()
    string(SHA256 hash "${text}")
    to_base64("${hash}" digest)
    string(HEX "${text}" hex)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" escapes "${hex}")
    string(REPLACE "\\x0a" "\\x0a\"\n    \"" escapes "${escapes}")
    set(source "${source}\nconst Embedded ${name}{\n    \"${escapes}\",\n    \"sha256-${digest}\"};\n" PARENT_SCOPE)
endfunction()

set(source "// Made from src/emit/web by embed.cmake.\n#include \"web.hpp\"\n\nnamespace scruple::emit::html {\n")
embed(style style.css)
embed(search_script search.js)
embed(card_script exact.js figure.js measures.js details.js batch.js volume.js boxes.js page.js clock.js)
string(APPEND source "\n}  // namespace scruple::emit::html\n")
file(WRITE "${OUT}.new" "${source}")
file(RENAME "${OUT}.new" "${OUT}")
