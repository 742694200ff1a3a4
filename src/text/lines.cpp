// SPDX-License-Identifier: MIT
#include "scruple/text/lines.hpp"

#include <algorithm>

namespace scruple::text {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool ends_line(std::string_view bytes, std::size_t at) {
    if (bytes[at] == '\n') return true;
    return bytes[at] == '\r' && (at + 1 == bytes.size() || bytes[at + 1] != '\n');
}

bool begins_code_point(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0u) != 0x80u;
}

std::size_t code_points(std::string_view bytes) {
    return static_cast<std::size_t>(std::count_if(bytes.begin(), bytes.end(), begins_code_point));
}

std::uint32_t clamped(std::string_view bytes, std::uint32_t offset) {
    return std::min(offset, static_cast<std::uint32_t>(bytes.size()));
}

}  // namespace

Lines::Lines(std::string_view bytes) : bytes_(bytes) {
    starts_.push_back(bytes.starts_with(byte_order_mark) ? byte_order_mark.size() : 0);
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        if (ends_line(bytes, at)) starts_.push_back(static_cast<std::uint32_t>(at + 1));
    }
    known_offset_ = starts_.front();
}

std::size_t Lines::line_of(std::uint32_t offset) const {
    const auto next = std::upper_bound(starts_.begin(), starts_.end(), offset);
    return next == starts_.begin() ? 0 : static_cast<std::size_t>(next - starts_.begin()) - 1;
}

Position Lines::position(std::uint32_t offset) {
    const std::size_t line = line_of(offset);
    const std::uint32_t place = std::max(clamped(bytes_, offset), starts_[line]);
    if (known_.line != line + 1 || known_offset_ > place) {
        known_ = {line + 1, 1};
        known_offset_ = starts_[line];
    }
    known_.column += code_points(bytes_.substr(known_offset_, place - known_offset_));
    known_offset_ = place;
    return known_;
}

Span Lines::line_around(std::uint32_t offset) const {
    const std::size_t line = line_of(offset);
    const std::uint32_t begin = starts_[line];
    std::uint32_t end = line + 1 < starts_.size() ? starts_[line + 1] : static_cast<std::uint32_t>(bytes_.size());
    if (end > begin && bytes_[end - 1] == '\n') --end;
    if (end > begin && bytes_[end - 1] == '\r') --end;
    return {begin, end};
}

Position position_of(const Source& source, std::uint32_t offset) {
    return Lines(source.bytes).position(offset);
}

Span line_around(const Source& source, std::uint32_t offset) {
    return Lines(source.bytes).line_around(offset);
}

}  // namespace scruple::text
