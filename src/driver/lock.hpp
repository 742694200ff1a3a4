// SPDX-License-Identifier: MIT
// A lock on a file that others may replace meanwhile.
#pragma once

#include <filesystem>

namespace scruple::driver {

enum class Wait { as_long_as_it_takes, not_at_all };

/// Takes the lock (flock) of an open file; false, with errno, where it cannot be had.
[[nodiscard]] bool lock(int file, Wait wait);

/// Whether the open file is still the one of that name. Where it is not, somebody has put another in its place, and the
/// lock is on one that nobody sees any more.
[[nodiscard]] bool is_still_there(int file, const std::filesystem::path& path);

}  // namespace scruple::driver
