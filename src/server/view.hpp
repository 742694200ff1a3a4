// SPDX-License-Identifier: MIT
// A few files of a workspace, checked together with all that they depend on.
#pragma once

#include "file.hpp"
#include "index.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::server {

/// The library stands in front once and for all; the files behind it change.
class View {
  public:
    View();

    /// Checks these, which must be in the order of their paths.
    void check(const std::vector<std::unique_ptr<File>>& files, const std::vector<FileNumber>& those);

    [[nodiscard]] const driver::Loaded& loaded() const { return loaded_; }
    [[nodiscard]] check::Model& model() { return loaded_.checked.model; }
    /// The source that a file is here; none where it was not taken along.
    [[nodiscard]] text::FileId source_of(FileNumber file) const;
    [[nodiscard]] FileNumber file_of(text::FileId source) const { return numbers_[source]; }

  private:
    driver::Loaded loaded_;
    check::Rechecker rechecker_;
    check::Checked* lent_ = nullptr;   ///< whose contents stand in loaded_ until the next check
    std::vector<FileNumber> numbers_;  ///< of each source
};

}  // namespace scruple::server
