// SPDX-License-Identifier: MIT
// A file on its way to being another one.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>
#include <string_view>

#include "descriptor.hpp"

namespace scruple::driver {

/// A hidden file in the folder of the one that is meant, held by a lock as long as this lives, and gone again unless it
/// takes its place. Where the process is killed meanwhile, it stays behind, held by nobody.
class Draft {
  public:
    explicit Draft(const std::filesystem::path& target);
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    ~Draft();

    /// Whether it could be made. This and all below leave errno where they say no.
    explicit operator bool() const { return there_; }
    [[nodiscard]] bool write(std::string_view text);
    /// On the disk, with this mode.
    [[nodiscard]] bool settle(mode_t mode);
    [[nodiscard]] bool take_place();

  private:
    [[nodiscard]] bool made();

    std::filesystem::path target_;
    std::string name_;
    Descriptor file_{-1};
    bool there_ = false;
};

/// Takes away the drafts in a folder that nobody holds any more.
void drop_drafts_left_behind(const std::filesystem::path& folder);

}  // namespace scruple::driver
