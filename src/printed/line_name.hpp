// SPDX-License-Identifier: MIT
// What a line is, by the words that are left once its amounts are taken out.
#pragma once

#include <string>

#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// Fills in what the line is, its name, form and strength. Its columns and what stands in front of a percent are known.
void name_line(Line& line, std::string name);

}  // namespace scruple::printed
