// SPDX-License-Identifier: MIT
// Lines of a chemical about what becomes of it in water.
#pragma once

#include "reader.hpp"

namespace scruple::check {

void read_equilibrium(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical);
void read_escape(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical);
void read_pair(Reader& reader, const syntax::Interaction& line, Chemical& chemical);
void read_bystanders(Reader& reader, const syntax::Bystanders& line, Chemical& chemical);

/// The atoms and the charge of an ion or a molecule, as a key. Ions without carbon count the same whether water is
/// written into them or not: BO2- is B(OH)4-, and B4O7-2 is B4O5(OH)4-2. With carbon that would confuse one thing with
/// another.
[[nodiscard]] std::string ion_key(const chemistry::Formula& formula);

}  // namespace scruple::check
