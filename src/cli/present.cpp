// SPDX-License-Identifier: MIT
#include "present.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

namespace scruple::cli {
namespace {

std::string escaped(std::string_view text) {
    std::string result;
    for (const char c : text) {
        switch (c) {
            case '&':
                result += "&amp;";
                break;
            case '<':
                result += "&lt;";
                break;
            case '>':
                result += "&gt;";
                break;
            default:
                result += c;
        }
    }
    return result;
}

}  // namespace

std::string page(std::string_view title, std::string_view text) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>{}</title>\n"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\">\n</head>\n"
        "<body>\n<pre>\n{}</pre>\n</body>\n</html>\n",
        escaped(title), escaped(text));
}

std::string presented(As as, std::string_view kind, std::string_view name, std::string_view text) {
    using nlohmann::ordered_json;
    switch (as) {
        case As::text:
            return std::string(text);
        case As::html:
            return page(name, text);
        case As::json:
            return ordered_json{{"kind", kind}, {"name", name}, {"text", text}}.dump(
                       2, ' ', false, ordered_json::error_handler_t::replace) +
                   "\n";
    }
    return {};
}

}  // namespace scruple::cli
