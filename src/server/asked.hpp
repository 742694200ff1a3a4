// SPDX-License-Identifier: MIT
// What a request asks about: a place in a file.
#pragma once

#include "wire.hpp"
#include "workspace.hpp"

namespace scruple::server {

/// A request that cannot be answered, with the number that the protocol gives to the reason.
struct Refused {
    int code = -32803;  // RequestFailed
    std::string message;
};

struct Asked {
    FileNumber number = 0;
    File* file = nullptr;
    Positions positions;
    std::uint32_t offset = 0;  ///< 0 where the request is about the whole file
};

/// Throws Refused where the file is not known.
[[nodiscard]] Asked asked(Workspace& workspace, const Json& params);

[[nodiscard]] Position position_of(const Json& json);
[[nodiscard]] Range range_of(const Json& json);
[[nodiscard]] Json to_json(const Position& position);
[[nodiscard]] Json to_json(const Range& range);
[[nodiscard]] Json location(const File& file, text::Span span);

/// The name that stands there; nullptr where none does.
[[nodiscard]] const Occurrence* occurrence_at(const File& file, std::uint32_t offset);
/// The statement of the line that an offset is in; syntax::nowhere where it has none.
[[nodiscard]] syntax::Index statement_at(const File& file, const Positions& positions, std::uint32_t offset);
/// The heading that a line stands below (or is); syntax::nowhere above the first.
[[nodiscard]] syntax::Index heading_above(const File& file, std::uint32_t offset);

}  // namespace scruple::server
