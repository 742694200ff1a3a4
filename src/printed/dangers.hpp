// SPDX-License-Identifier: MIT
// What old books tell one to do and to handle that today's data sheets warn of.
#pragma once

#include <vector>

#include "scruple/printed/settle.hpp"
#include "ways.hpp"

namespace scruple::printed {

/// By words, whatever the library knows, and by the hazards of the chemicals that it knows; each once.
[[nodiscard]] std::vector<Warning> dangers_in(const check::Model& model, const check::PrintedPage& typed,
                                              const Layout& layout);

/// A line that gives first aid, which is never carried over.
[[nodiscard]] bool is_first_aid(std::string_view line);

}  // namespace scruple::printed
