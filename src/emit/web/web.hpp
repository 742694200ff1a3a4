// SPDX-License-Identifier: MIT
// The style and the scripts of the pages, put into the program when it is built (embed.cmake).
#pragma once

#include <string_view>

namespace scruple::emit::html {

/// A text of the program's own, and its digest, which lets a page's policy take this one and no other.
struct Embedded {
    std::string_view text, digest;
};

extern const Embedded style, search_script, card_script;

}  // namespace scruple::emit::html
