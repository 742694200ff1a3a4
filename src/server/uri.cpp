// SPDX-License-Identifier: MIT
#include "uri.hpp"

namespace scruple::server {
namespace {

constexpr std::string_view scheme = "file://";

int digit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
}

bool is_plain(char c) {
    const bool alphanumeric = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    return alphanumeric || std::string_view("-._~/").find(c) != std::string_view::npos;
}

}  // namespace

std::optional<std::string> path_of(std::string_view uri) {
    if (!uri.starts_with(scheme)) return std::nullopt;
    uri.remove_prefix(scheme.size());
    if (uri.starts_with("localhost/")) uri.remove_prefix(std::string_view("localhost").size());
    if (!uri.starts_with('/')) return std::nullopt;
    std::string path;
    for (std::size_t i = 0; i < uri.size(); ++i) {
        if (uri[i] != '%') {
            path += uri[i];
            continue;
        }
        if (i + 2 >= uri.size() || digit(uri[i + 1]) < 0 || digit(uri[i + 2]) < 0) return std::nullopt;
        path += static_cast<char>(digit(uri[i + 1]) * 16 + digit(uri[i + 2]));
        i += 2;
    }
    return path;
}

std::string uri_of(std::string_view path) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string uri(scheme);
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        if (is_plain(c))
            uri += c;
        else
            uri += {'%', digits[byte >> 4], digits[byte & 15]};
    }
    return uri;
}

}  // namespace scruple::server
