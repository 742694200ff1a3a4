// SPDX-License-Identifier: MIT
// Files as the protocol names them: RFC 8089 `file` URIs.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace scruple::server {

/// `file:///shed/a%20b.scruple` as `/shed/a b.scruple`; nullopt for what is no file of this machine.
[[nodiscard]] std::optional<std::string> path_of(std::string_view uri);
/// Of an absolute path.
[[nodiscard]] std::string uri_of(std::string_view path);

}  // namespace scruple::server
