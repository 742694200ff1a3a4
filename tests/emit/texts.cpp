// SPDX-License-Identifier: MIT
#include "texts.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>

std::vector<scruple::text::Source> project_texts() {
    std::vector<scruple::text::Source> texts;
    for (const char* folder : {"recipes", "src/library", "tests/cases/whole"}) {
        const std::filesystem::path root = std::filesystem::path(SCRUPLE_SOURCE_DIR) / folder;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root)) {
            if (entry.path().extension() != ".scruple") continue;
            std::ostringstream bytes;
            bytes << std::ifstream(entry.path(), std::ios::binary).rdbuf();
            texts.push_back({entry.path().string(), bytes.str()});
        }
    }
    std::sort(texts.begin(), texts.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return texts;
}
