// SPDX-License-Identifier: MIT
// Plain text as a page or as JSON, for what no back end makes.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "call.hpp"

namespace scruple::cli {

/// The text as it is; on a page that keeps its lines; or as {"kind":kind,"name":name,"text":text}.
[[nodiscard]] std::string presented(As as, std::string_view kind, std::string_view name, std::string_view text);

/// A document as it is printed: nothing in it acts on a terminal.
[[nodiscard]] std::string json_text(const nlohmann::ordered_json& document);

/// A whole page with the text as it stands.
[[nodiscard]] std::string page(std::string_view title, std::string_view text);

}  // namespace scruple::cli
