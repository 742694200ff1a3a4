// SPDX-License-Identifier: MIT
// One line of a page: its name, its amounts in columns, what is said of its strength and form.
#pragma once

#include "scruple/printed/page.hpp"

namespace scruple::printed {

/// `text` as typed, without a label before it; what it gives for use of other solutions is not read here.
[[nodiscard]] Line read_line(std::string_view text);

}  // namespace scruple::printed
