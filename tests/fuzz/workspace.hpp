// SPDX-License-Identifier: MIT
// A text as the only file of a folder, read and checked as the program does it.
#pragma once

#include <string>
#include <vector>

#include "scruple/driver/driver.hpp"

namespace fuzz {

using scruple::driver::Loaded;

class Workspace {
  public:
    /// The library, which is checked once.
    Workspace();

    /// False where the text is refused before it is parsed; `diagnostics` then says so.
    bool take(std::string text);
    /// The same without the lines in which errors stand, again and again: what is printed for the bench is printed of
    /// files without an error. False where some are left, too.
    bool take_what_is_right(std::string text);
    /// Whether the text that was taken, checked in passing, has the same said against it. What was loaded is gone.
    bool is_same_in_passing();

    [[nodiscard]] const Loaded& loaded() const { return loaded_; }
    [[nodiscard]] scruple::check::Model& model() { return loaded_.checked.model; }
    [[nodiscard]] const scruple::text::Source& source() const { return loaded_.sources.back(); }
    [[nodiscard]] const scruple::syntax::Tree& tree() const { return *loaded_.trees.back(); }

  private:
    [[nodiscard]] std::string without_errors() const;

    Loaded loaded_;
    std::vector<scruple::text::Source> library_;
    std::vector<scruple::syntax::SharedTree> library_trees_;
    scruple::check::Rechecker rechecker_;
    scruple::check::Checked* last_ = nullptr;  ///< of the rechecker, lent to `loaded_`
};

/// The one of this run.
Workspace& workspace();

}  // namespace fuzz
