// SPDX-License-Identifier: MIT
#include "html.hpp"
#include "scruple/emit/emit.hpp"

namespace scruple::emit {

std::string plain_html(std::string_view title, std::string_view text) {
    auto body = html::element("h1", title);
    body += html::lines(text);
    return html::page(title, body);
}

}  // namespace scruple::emit
