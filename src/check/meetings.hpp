// SPDX-License-Identifier: MIT
// What must not meet: its blocks, and the lines that accept it.
#pragma once

#include "reader.hpp"

namespace scruple::check {

/// Adds what an `accept` line accepts; reports one that names no meeting or gives no reason.
void read_acceptance(Reader& reader, const syntax::Accept& line, SeldomMany<Acceptance>& into);

}  // namespace scruple::check
