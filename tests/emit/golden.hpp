// SPDX-License-Identifier: MIT
// What a back end says against what it said when somebody last looked at it and found it good.
// SCRUPLE_REFRESH=1 in the environment writes the files anew; read the difference before committing it. SCRUPLE_PAGES
// is a folder to put the whole of them into, for emit/documents.py.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

/// Leaves out what stands between two words, wherever they stand.
inline std::string without_between(std::string text, const std::string& begin, const std::string& end) {
    for (auto at = text.find(begin); at != std::string::npos; at = text.find(begin, at)) {
        at += begin.size();
        text.erase(at, text.find(end, at) - at);
    }
    return text;
}

/// The style and the scripts are files of their own (src/emit/web): a page is kept without them and their digests.
inline std::string without_style_and_scripts(const std::string& page) {
    const auto bare = without_between(without_between(page, "<style>", "</style>"), "<script>", "</script>");
    return without_between(bare, "'sha256-", "'");
}

inline std::string golden_file(const std::string& name) {
    return std::string(SCRUPLE_SOURCE_DIR "/tests/emit/golden/") + name;
}

inline void check_against_golden(const std::string& name, const std::string& said) {
    if (const char* pages = std::getenv("SCRUPLE_PAGES")) std::ofstream(std::string(pages) + "/" + name) << said;
    const std::string kept = without_style_and_scripts(said);
    if (std::getenv("SCRUPLE_REFRESH") != nullptr) std::ofstream(golden_file(name), std::ios::binary) << kept;
    std::ifstream file(golden_file(name), std::ios::binary);
    std::ostringstream expected;
    expected << file.rdbuf();
    const bool as_it_was = kept == expected.str();
    CHECK_MESSAGE(as_it_was, name);
}
