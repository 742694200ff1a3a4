// SPDX-License-Identifier: MIT
// The language server: the Language Server Protocol 3.17 over two streams.
#pragma once

#include <string_view>

namespace scruple::server {

/// Speaks on `in` and `out` until the client says `exit` or is gone. `version` is the program's. The status to exit
/// with: 0 after `shutdown`, else 1, as the protocol has it.
[[nodiscard]] int serve(int in, int out, std::string_view version);

}  // namespace scruple::server
