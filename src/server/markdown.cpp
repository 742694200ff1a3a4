// SPDX-License-Identifier: MIT
#include "markdown.hpp"

#include <algorithm>

#include "scruple/text/printable.hpp"

namespace scruple::server {

std::string markdown(std::string_view text) {
    constexpr std::string_view active = "\\`*_[]<>|&~!#:$";
    std::string all;
    for (const char c : text::printable(text)) {
        // `www.` makes a link, too.
        if (active.find(c) != std::string_view::npos || (c == '.' && all.ends_with("www"))) all += '\\';
        all += c;
    }
    return all;
}

std::string markdown_code(std::string_view text) {
    std::string all = text::printable(text);
    std::ranges::replace(all, '`', '\'');
    return "`" + all + "`";
}

}  // namespace scruple::server
