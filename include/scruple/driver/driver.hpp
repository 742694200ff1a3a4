// SPDX-License-Identifier: MIT
// One call a job: read a folder, check it, make what was asked for. The command line and any
// other front end call these; nothing here prints or exits.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "scruple/check/check.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::driver {

/// A workspace read and checked. The library that is built in comes first among the sources.
struct Loaded {
    std::vector<text::Source> sources;
    std::vector<syntax::Tree> trees;
    std::size_t built_in = 0;
    check::Checked checked;
};

/// What could not be read or written, in words.
struct Trouble {
    std::string message;
};

enum class As : std::uint8_t { text, html, json };

/// All `.scruple` files under the folder, sorted by path, links to folders not followed, hidden folders passed
/// over; parsed side by side. A file that cannot be taken (not UTF-8, too large) is a diagnostic, not a Trouble.
[[nodiscard]] std::variant<Loaded, Trouble> load(const std::filesystem::path& folder);

/// A file's worth of text: whole or not at all (written beside, synced, renamed).
[[nodiscard]] std::optional<Trouble> write_whole(const std::filesystem::path& path, std::string_view text);

/// The embedded library, path (`built-in/alkalis.scruple`) and text.
[[nodiscard]] const std::vector<text::Source>& library();

}  // namespace scruple::driver
