// SPDX-License-Identifier: MIT
// Lines of a chemical about what becomes of it in water.
#pragma once

#include "reader.hpp"

namespace scruple::check {

void read_equilibrium(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical);
void read_escape(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical);
void read_pair(Reader& reader, const syntax::Interaction& line, Chemical& chemical);
void read_bystanders(Reader& reader, const syntax::Bystanders& line, Chemical& chemical);

}  // namespace scruple::check
