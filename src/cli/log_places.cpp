// SPDX-License-Identifier: MIT
#include "log_places.hpp"

#include <fmt/format.h>

namespace scruple::cli {

std::string LogPlaces::where(const check::Place& place) {
    const text::Source& source = loaded_.sources[place.file];
    const auto lines = lines_.try_emplace(place.file, source.bytes).first;
    return fmt::format("{}:{}", source.path, lines->second.position(place.span.begin).line);
}

}  // namespace scruple::cli
