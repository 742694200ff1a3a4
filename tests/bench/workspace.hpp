// SPDX-License-Identifier: MIT
// The same invented recipes as recipe text, as TOML and as YAML, for measuring readers beside one another.
#pragma once

#include <string>
#include <vector>

#include "scruple/text/source.hpp"

namespace scruple::bench {

struct Workspace {
    std::vector<text::Source> recipes;  ///< one recipe a file, about 1 kB each
    std::string toml, yaml;             ///< all of them in one document, the same names, amounts and steps
    std::size_t bytes = 0;              ///< of recipe text
};

/// `count` recipes, every one with other names and figures; the same for the same count.
[[nodiscard]] Workspace generate(std::size_t count);

/// The library that is built into the program, read from its folder.
[[nodiscard]] std::vector<text::Source> library();

}  // namespace scruple::bench
