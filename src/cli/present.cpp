// SPDX-License-Identifier: MIT
#include "present.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "scruple/text/printable.hpp"

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
        escaped(text::printable(title)), escaped(text::printable_lines(text)));
}

std::string json_text(const nlohmann::ordered_json& document) {
    // A path may hold bytes that are not UTF-8; JSON may not.
    const auto replaced = nlohmann::ordered_json::error_handler_t::replace;
    return text::with_unseen_escaped(document.dump(2, ' ', false, replaced)) + "\n";
}

std::string presented(As as, std::string_view kind, std::string_view name, std::string_view text) {
    switch (as) {
        case As::text:
            return std::string(text);
        case As::html:
            return page(name, text);
        case As::json:
            return json_text({{"kind", kind}, {"name", name}, {"text", text}});
    }
    return {};
}

}  // namespace scruple::cli
