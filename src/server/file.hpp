// SPDX-License-Identifier: MIT
// One recipe file as the server knows it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "names.hpp"
#include "positions.hpp"
#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::server {

struct File {
    text::Source source{};
    std::string uri{};  ///< empty for the library, which is in no file
    syntax::SharedTree tree{};
    std::optional<diagnostics::Diagnostic> fault{};  ///< then there is no tree
    Names names{};
    std::string whole{};  ///< where there is a fault: the text as the editor has it, all of it
    bool open = false;    ///< in the editor: what stands on the disk does not count
    bool gone = false;
    std::optional<std::int64_t> version{};
    std::vector<diagnostics::Diagnostic> found{};  ///< as of the last check; files are the workspace's numbers

    [[nodiscard]] const std::string& text() const { return fault ? whole : source.bytes; }
    [[nodiscard]] Positions positions() const { return Positions(text()); }
};

}  // namespace scruple::server
