// SPDX-License-Identifier: MIT
// Words of a file within Markdown.
#pragma once

#include <string>
#include <string_view>

namespace scruple::server {

/// Printable, with every sign escaped that Markdown (CommonMark, and the tables and links of GitHub's) would act on.
[[nodiscard]] std::string markdown(std::string_view text);

/// `text` as it stands, in backticks.
[[nodiscard]] std::string markdown_code(std::string_view text);

}  // namespace scruple::server
