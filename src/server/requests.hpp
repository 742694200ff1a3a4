// SPDX-License-Identifier: MIT
// What can be asked: each from the parameters of a request to its result. Each may throw Refused, or what nlohmann-json
// throws where the parameters are not what the protocol says.
#pragma once

#include "asked.hpp"

namespace scruple::server {

[[nodiscard]] Json diagnostics_of(const Workspace& workspace, const File& file);

[[nodiscard]] Json code_actions(Workspace& workspace, const Json& params);
[[nodiscard]] Json hover(Workspace& workspace, const Json& params);
[[nodiscard]] Json completion(Workspace& workspace, const Json& params);
[[nodiscard]] Json definition(Workspace& workspace, const Json& params);
[[nodiscard]] Json references(Workspace& workspace, const Json& params);
[[nodiscard]] Json highlights(Workspace& workspace, const Json& params);
[[nodiscard]] Json prepare_rename(Workspace& workspace, const Json& params);
[[nodiscard]] Json rename(Workspace& workspace, const Json& params);
[[nodiscard]] Json document_symbols(Workspace& workspace, const Json& params);
[[nodiscard]] Json workspace_symbols(Workspace& workspace, const Json& params);
[[nodiscard]] Json folding(Workspace& workspace, const Json& params);
[[nodiscard]] Json semantic_tokens(Workspace& workspace, const Json& params);
[[nodiscard]] Json token_legend();
[[nodiscard]] Json formatting(Workspace& workspace, const Json& params);
[[nodiscard]] Json inlay_hints(Workspace& workspace, const Json& params);
[[nodiscard]] Json code_lenses(Workspace& workspace, const Json& params);
[[nodiscard]] Json execute_command(Workspace& workspace, const Json& params);

}  // namespace scruple::server
