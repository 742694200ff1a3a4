// SPDX-License-Identifier: MIT
// Figures that are far from what such solutions hold, and what may have gone wrong with them.
#pragma once

#include <string>

#include "judge.hpp"
#include "scruple/printed/settle.hpp"

namespace scruple::printed {

/// Whether a line is far outside what is usual, or of a kind that no line is: twice too much or half too little, a
/// solid measured in millilitres. Fills in the fault and the likely slip.
void tell_unusual(const Judge& judge, const Known& known, std::size_t line, const Way& way, const Shared& shared,
                  LineRead& read);

/// Which of two columns that disagree is the unusual one, in words; empty where that does not tell.
[[nodiscard]] std::string unusual_column(const Judge& judge, std::size_t line, const Compared& compared, const Way& way,
                                         const Shared& shared);

}  // namespace scruple::printed
