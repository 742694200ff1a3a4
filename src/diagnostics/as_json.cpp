// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "places.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::diagnostics {

using nlohmann::ordered_json;

std::string as_json(std::span<const Diagnostic> diagnostics, std::span<const text::Source> sources) {
    Places places(sources);
    ordered_json list = ordered_json::array();
    for (const Diagnostic& d : diagnostics) {
        const bool placed = places.has(d.file);
        const text::Position at = placed ? places.lines(d.file).position(d.span.begin) : text::Position{0, 0};
        list.push_back({{"file", placed ? places.source(d.file).path : ""},
                        {"line", at.line},
                        {"column", at.column},
                        {"severity", name_of(info(d.kind).severity)},
                        {"kind", info(d.kind).name},
                        {"message", d.message},
                        {"write", d.write}});
    }
    // A path may hold bytes that are not UTF-8; JSON may not.
    return text::with_unseen_escaped(list.dump(2, ' ', false, ordered_json::error_handler_t::replace)) + "\n";
}

}  // namespace scruple::diagnostics
