// SPDX-License-Identifier: MIT
// Recipe texts of the project to try things on: the demo, the library and the whole recipes of the tests.
#pragma once

#include <filesystem>
#include <vector>

#include "scruple/text/source.hpp"

[[nodiscard]] std::vector<scruple::text::Source> project_texts();
