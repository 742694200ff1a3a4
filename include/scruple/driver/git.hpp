// SPDX-License-Identifier: MIT
// Recipes as they were at a revision, by the user's own git.
#pragma once

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {

struct Revision {
    std::vector<RecipeFile> files;
    std::string only;  ///< the one file that was named; empty for a folder
};

/// `main~3`: `folder` as it was then. `main~3:recipes`, `main~3:recipes/heron.scruple`: that folder or file, from the
/// root of the repository. The program `git` is run without a shell, and is handed nothing of the caller's but the
/// revision, behind `--end-of-options`.
[[nodiscard]] std::variant<Revision, Trouble> files_at(const std::filesystem::path& folder,
                                                       const std::string& revision);

}  // namespace scruple::driver
