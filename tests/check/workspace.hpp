// SPDX-License-Identifier: MIT
// A workspace to check: the built-in library, and recipe text after it.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/check/check.hpp"

namespace scruple::test {

/// What a checked workspace points into lives here, so it is neither copied nor moved.
class Workspace {
  public:
    /// With the library in it: src/library/*.scruple, parsed.
    Workspace();
    Workspace(const Workspace&) = delete;
    Workspace& operator=(const Workspace&) = delete;

    /// Adds a file; check() has to be called afterwards.
    void add(std::string path, std::string bytes);
    void add_file(const std::string& path);
    /// Back to the library alone.
    void clear();
    /// How many files there are beside the library.
    [[nodiscard]] std::size_t added() const { return sources_.size() - built_in_; }

    const check::Checked& check(unsigned workers = 1);
    /// What is wrong, without a model, and with the library checked once for all that are checked so; the same with all
    /// files in passing that can be.
    const std::vector<diagnostics::Diagnostic>& check_again(unsigned workers = 1);
    const std::vector<diagnostics::Diagnostic>& check_in_passing(unsigned workers = 1);

    [[nodiscard]] const check::Model& model() const { return checked_.model; }
    [[nodiscard]] const std::vector<diagnostics::Diagnostic>& diagnostics() const { return checked_.diagnostics; }
    [[nodiscard]] const std::vector<text::Source>& sources() const { return sources_; }
    [[nodiscard]] bool is_library(text::FileId file) const { return file < built_in_; }

  private:
    using Outlines = std::vector<std::optional<syntax::Outline>>;

    const std::vector<diagnostics::Diagnostic>& recheck(std::span<const syntax::SharedTree> trees,
                                                        const Outlines& outlines, unsigned workers);

    std::vector<text::Source> sources_;
    std::vector<syntax::SharedTree> trees_;
    std::size_t built_in_ = 0;
    check::Checked checked_;
    std::optional<check::Rechecker> rechecker_;
};

/// All files *.scruple of a folder under the project root, by name.
[[nodiscard]] std::vector<std::string> recipe_files_in(const std::string& folder);

[[nodiscard]] std::string read_whole(const std::string& path);

/// One paragraph a diagnostic, as the case files state them: place and kind, message, the stretch marked, what to
/// write instead, other places. `main` is the file whose path is left out.
[[nodiscard]] std::string described(const Workspace& workspace, const diagnostics::Diagnostic& diagnostic,
                                    text::FileId main);

/// All of them, for a message of a failed check.
[[nodiscard]] std::string described(const Workspace& workspace);

/// The id of `Recipe`, `Recipe part A` …; fails the test where there is none.
[[nodiscard]] check::Id section_called(const check::Model& model, const std::string& normal_name);
/// The form of a chemical by its names; fails the test where there is none.
[[nodiscard]] const check::Form& form_called(const check::Model& model, const std::string& chemical,
                                             std::string_view form);

}  // namespace scruple::test
