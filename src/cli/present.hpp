// SPDX-License-Identifier: MIT
// Plain text as a page or as JSON, for what no back end makes.
#pragma once

#include <string>
#include <string_view>

#include "call.hpp"

namespace scruple::cli {

/// The text as it is; on a page that keeps its lines; or as {"kind":kind,"name":name,"text":text}.
[[nodiscard]] std::string presented(As as, std::string_view kind, std::string_view name, std::string_view text);

}  // namespace scruple::cli
