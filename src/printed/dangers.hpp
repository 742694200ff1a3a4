// SPDX-License-Identifier: MIT
// What old books tell one to do and to handle that today's data sheets warn of.
#pragma once

#include <vector>

#include "scruple/printed/settle.hpp"

namespace scruple::printed {

/// By words, whatever the library knows; each once.
[[nodiscard]] std::vector<Warning> dangers_in(const check::PrintedPage& typed);

/// A line that gives first aid, which is never carried over.
[[nodiscard]] bool is_first_aid(std::string_view line);

}  // namespace scruple::printed
