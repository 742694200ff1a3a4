// SPDX-License-Identifier: MIT
#include "line_places.hpp"

#include <fmt/format.h>

namespace scruple::cli {

std::size_t LinePlaces::line(const check::Place& place) {
    const auto lines = lines_.try_emplace(place.file, loaded_.sources[place.file].bytes).first;
    return lines->second.position(place.span.begin).line;
}

std::string LinePlaces::where(const check::Place& place) {
    return fmt::format("{}:{}", loaded_.sources[place.file].path, line(place));
}

}  // namespace scruple::cli
