// SPDX-License-Identifier: MIT
// What a back end says against what it said when somebody last looked at it and found it good.
// SCRUPLE_REFRESH=1 in the environment writes the files anew; read the difference before committing it.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

inline std::string golden_file(const std::string& name) {
    return std::string(SCRUPLE_SOURCE_DIR "/tests/emit/golden/") + name;
}

inline void check_against_golden(const std::string& name, const std::string& said) {
    if (std::getenv("SCRUPLE_REFRESH") != nullptr) std::ofstream(golden_file(name), std::ios::binary) << said;
    std::ifstream file(golden_file(name), std::ios::binary);
    std::ostringstream expected;
    expected << file.rdbuf();
    const bool as_it_was = said == expected.str();
    CHECK_MESSAGE(as_it_was, name);
}
