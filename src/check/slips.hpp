// SPDX-License-Identifier: MIT
// Lines that nothing reads, and what their author most likely meant to write.
#pragma once

#include <string>
#include <string_view>

namespace scruple::check {

/// The line as it can be read: the amount behind the name, the form before the amount, a comma before a detail, `at`
/// before a temperature. Empty where none of these slips explains the line.
[[nodiscard]] std::string mended(std::string_view line);

}  // namespace scruple::check
