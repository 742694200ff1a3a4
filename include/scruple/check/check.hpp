// SPDX-License-Identifier: MIT
// From syntax trees to a checked workspace and everything that is wrong with it.
#pragma once

#include <optional>
#include <span>

#include "scruple/check/model.hpp"
#include "scruple/syntax/outline.hpp"

namespace scruple::check {

/// What goes in: sources and trees of the same length. The first `built_in` of them are the
/// library that ships with the program; a user's block of the same name overrides one of its blocks.
struct Workspace {
    std::span<const text::Source> sources;
    std::span<const syntax::SharedTree> trees;
    std::size_t built_in = 0;
    /// For whoever wants to know what is wrong, and not the model: files that are checked *in passing*, by outlines in
    /// place of trees. Such a file is parsed, read and judged while it is at hand, and let go at once, so that the
    /// memory of a workspace is that of its names; of its recipes the model keeps no more than those. Nothing but
    /// recipes may stand in it (syntax::has_recipes_only). As long as `trees`, or empty.
    std::span<const std::optional<syntax::Outline>> outlines{};

    /// Of a file that is checked in passing; null for one that has a tree.
    [[nodiscard]] const syntax::Outline* outline(text::FileId file) const {
        return file < outlines.size() && outlines[file] ? &*outlines[file] : nullptr;
    }
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
