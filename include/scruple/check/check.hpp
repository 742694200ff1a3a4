// SPDX-License-Identifier: MIT
// From syntax trees to a checked workspace and everything that is wrong with it.
#pragma once

#include <functional>
#include <span>

#include "scruple/check/model.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::check {

/// What goes in: sources and trees of the same length. The first `built_in` of them are the
/// library that ships with the program; a user's block of the same name overrides one of its blocks.
struct Workspace {
    std::span<const text::Source> sources;
    std::span<const syntax::Tree> trees;
    std::size_t built_in = 0;
    /// Called where nobody will look at the tree of a file any more, on any thread: whoever has no use for it himself
    /// can let it go, and the model has room where it stood.
    std::function<void(text::FileId)> done_with{};
};

struct Checked {
    Model model;
    std::vector<diagnostics::Diagnostic> diagnostics;  ///< sorted, each fault once
};

/// Checks the whole workspace, on as many threads as `workers` says (0: one a core).
[[nodiscard]] Checked check(const Workspace& workspace, unsigned workers = 0);

/// The same for workspaces that are checked one after the other, all with one library in front of them: it is checked
/// once. What comes of a check is the same, and stays until the next.
class Rechecker {
  public:
    /// `library`: its sources and trees, which must outlive this, though the arrays that they stand in may not.
    explicit Rechecker(const Workspace& library);

    [[nodiscard]] Checked& check(const Workspace& workspace, unsigned workers);

  private:
    void forget_all_but_the_library();

    Checked checked_, with_chemicals_;
    std::size_t sections_ = 0, conversions_ = 0;  ///< of the library
    std::vector<FilmFormat> formats_;
    std::vector<Meeting> meetings_;
    std::unordered_map<std::string, Id> section_names_, format_names_, meeting_names_;
};

}  // namespace scruple::check
