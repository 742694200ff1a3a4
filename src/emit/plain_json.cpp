// SPDX-License-Identifier: MIT
#include "json.hpp"
#include "scruple/emit/emit.hpp"

namespace scruple::emit {
namespace {

std::string_view name_of(TidiedFile::State state) {
    using enum TidiedFile::State;
    return state == changed ? "changed" : state == unchanged ? "unchanged" : "left";
}

}  // namespace

std::string plain_json(std::string_view kind, std::string_view name, std::string_view text) {
    return json::document({{"kind", kind}, {"name", name}, {"text", text}});
}

std::string tidied_json(std::span<const TidiedFile> files) {
    const auto rows = json::each(files, [](const TidiedFile& file) {
        return json::Value{{"file", file.path}, {"state", name_of(file.state)}, {"why", file.why}};
    });
    return json::document({{"kind", "tidy"}, {"files", rows}});
}

}  // namespace scruple::emit
