// SPDX-License-Identifier: MIT
#include "wire.hpp"

#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <optional>

namespace scruple::server {
namespace {

constexpr std::size_t longest_head = 8192;
constexpr std::size_t longest_body = 64u << 20;
constexpr std::string_view end_of_head = "\r\n\r\n";

bool is_length(std::string_view name) {
    constexpr std::string_view wanted = "content-length";
    if (name.size() != wanted.size()) return false;
    for (std::size_t i = 0; i < name.size(); ++i) {
        const char c = name[i] >= 'A' && name[i] <= 'Z' ? static_cast<char>(name[i] - 'A' + 'a') : name[i];
        if (c != wanted[i]) return false;
    }
    return true;
}

std::optional<std::size_t> number(std::string_view digits) {
    while (!digits.empty() && digits.front() == ' ') digits.remove_prefix(1);
    std::size_t value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc() || digits.empty() || end != digits.data() + digits.size()) return std::nullopt;
    return value;
}

/// Of the head's `Content-Length` line.
std::optional<std::size_t> length_in(std::string_view head) {
    while (!head.empty()) {
        const std::string_view line = head.substr(0, head.find("\r\n"));
        head.remove_prefix(std::min(head.size(), line.size() + 2));
        const std::size_t colon = line.find(':');
        if (colon != std::string_view::npos && is_length(line.substr(0, colon))) return number(line.substr(colon + 1));
    }
    return std::nullopt;
}

}  // namespace

bool Wire::cut_message(std::string& body, Arrival& arrival) {
    const std::string_view rest = std::string_view(buffer_).substr(begin_);
    const std::size_t head = rest.find(end_of_head);
    if (head == std::string_view::npos) {
        if (rest.size() > longest_head) closed_ = true;
        return false;
    }
    const auto length = length_in(rest.substr(0, head));
    if (!length) {
        begin_ += head + end_of_head.size();
        arrival = Arrival::malformed;
        return true;
    }
    if (*length > longest_body) {
        closed_ = true;
        return false;
    }
    const std::size_t from = head + end_of_head.size();
    if (rest.size() < from + *length) return false;
    body.assign(rest.substr(from, *length));
    begin_ += from + *length;
    if (begin_ == buffer_.size() || begin_ > longest_head) {
        buffer_.erase(0, begin_);
        begin_ = 0;
    }
    arrival = Arrival::message;
    return true;
}

/// Reads what has come; false where nothing has.
bool Wire::fill(int milliseconds) {
    pollfd waits{in_, POLLIN, 0};
    const int ready = ::poll(&waits, 1, milliseconds);
    if (ready < 0 && errno == EINTR) return false;
    if (ready == 0) return false;
    std::array<char, 65536> piece{};
    const ssize_t count = ::read(in_, piece.data(), piece.size());
    if (count < 0 && (errno == EINTR || errno == EAGAIN)) return false;
    if (count <= 0) {
        closed_ = true;
        return false;
    }
    buffer_.append(piece.data(), static_cast<std::size_t>(count));
    return true;
}

Wire::Arrival Wire::next(std::string& body, int milliseconds) {
    Arrival arrival = Arrival::nothing;
    while (!cut_message(body, arrival)) {
        if (closed_) return Arrival::closed;
        if (!fill(milliseconds) && !closed_ && milliseconds >= 0) return Arrival::nothing;
    }
    return arrival;
}

void Wire::send(const Json& message) {
    const std::string body = message.dump(-1, ' ', false, Json::error_handler_t::replace);
    const std::string text = "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body;
    std::string_view rest = text;
    while (!rest.empty() && !broken_) {
        const ssize_t count = ::write(out_, rest.data(), rest.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0)
            broken_ = true;
        else
            rest.remove_prefix(static_cast<std::size_t>(count));
    }
}

}  // namespace scruple::server
